#include "planner/result/past_limits.h"

#include <algorithm>

#include <fmt/core.h>

#include "job/stages.h"

namespace coatday::planner {
namespace {

constexpr Minutes grid_step = Minutes(5);

class PastJudge {
 public:
  explicit PastJudge(job::Plan& plan) : plan_(plan) {}

  void run() {
    std::vector<job::Finding> found;
    for (const job::Event& event : plan_.events) {
      if (!event.done) continue;
      for (const job::AfterEvent& after : event.after) too_early(event, after, found);
      turned_too_early(event, found);
      for (const job::BeforeEvent& before : event.before) too_late(event, before, found);
    }
    plan_.findings.insert(plan_.findings.end(), found.begin(), found.end());
  }

 private:
  [[nodiscard]] const job::Event* find(const std::string& id) const {
    const auto found = std::find_if(plan_.events.begin(), plan_.events.end(), [&](const job::Event& e) { return e.id == id; });
    return found == plan_.events.end() || !found->done ? nullptr : &*found;
  }

  [[nodiscard]] std::string when(Instant t) const { return day_and_time(plan_.shop.zone.to_local(t)); }

  static std::string name(const job::Event& e) { return e.load_name.empty() ? e.name : fmt::format("{} ({})", e.name, e.load_name); }

  static void say(std::string code, const job::Event& event, std::string message, std::vector<job::Finding>& found) {
    found.push_back({std::move(code), job::Severity::warning, std::move(message), event.id, {}});
  }

  static const char* meaning(const job::Event& event) {
    if (job::is_coat(event.kind))
      return "both coats may stay soft or wrinkle. Give them longer, and try them with a fingernail before you go on";
    return event.kind == job::EventKind::turn ? "look for marks of what it lay on" : "look for torn or rolled-up film before you go on";
  }

  /// By the expected time: whoever was there may have felt that it was ready.
  void too_early(const job::Event& event, const job::AfterEvent& after, std::vector<job::Finding>& found) const {
    const job::Event* below = find(after.event);
    if (below == nullptr || !after.stage) return;
    const auto& ready = below->stages.expected[*after.stage];
    if (!ready || event.start + grid_step >= *ready) return;
    say("done-too-early", event,
        fmt::format("{} began at {}, but {} was {} only at {}: {}", name(event), when(event.start), name(*below), job::dry_to(*after.stage),
                    when(*ready), meaning(event)),
        found);
  }

  /// Nobody writes down turning: the second side was turned up before it was coated.
  void turned_too_early(const job::Event& second, std::vector<job::Finding>& found) const {
    const bool turned = second.step_id.pass == job::StepId::Pass::second || second.step_id.pass == job::StepId::Pass::hidden;
    if (!turned || second.product.empty() || !second.support) return;
    for (const job::Event& first : plan_.events) {
      const bool other_side = first.done && &first != &second && first.step == second.step && !first.product.empty() &&
                              first.start < second.start && job::load_key(first.step_id) == job::load_key(second.step_id);
      if (!other_side) continue;
      const finish::Stage stage = job::turnable(plan_.products.at(first.product), *second.support);
      const auto& ready = first.stages.expected[stage];
      if (!ready || second.start + grid_step >= *ready) continue;
      say("done-too-early", second,
          fmt::format("{} began on the other side at {}, but the first side was {} only at {}: look for marks of what it lay on",
                      name(second), when(second.start), job::dry_to(stage), when(*ready)),
          found);
    }
  }

  void too_late(const job::Event& event, const job::BeforeEvent& before, std::vector<job::Finding>& found) const {
    const job::Event* other = find(before.event);
    if (other == nullptr || event.start <= before.latest + grid_step) return;
    const char* means = before.stage ? "the new coat may not hold; try it with tape on a hidden spot before you go on"
                                     : "look whether it has cupped or changed before you go on";
    say("done-too-late", event,
        fmt::format("{} began at {}, {} too late: {}: {}", name(event), when(event.start), format_span(event.start - before.latest),
                    before.reason, means),
        found);
  }

  job::Plan& plan_;
};

}  // namespace

void write_past_limits(job::Plan& plan) { PastJudge(plan).run(); }

}  // namespace coatday::planner
