#include "planner/result/explain.h"

#include <algorithm>
#include <map>

#include <fmt/core.h>

#include "finish/application_limits.h"
#include "job/stages.h"
#include "planner/result/in_the_way.h"

namespace coatday::planner {

namespace {

using solver::Time;

class Explainer {
 public:
  Explainer(const job::Plan& plan, const TaskGraph& graph, const Model& model, const solver::Schedule& schedule, Clocks& clocks,
            const Grid& grid)
      : plan_(plan),
        graph_(graph),
        clocks_(clocks),
        grid_(grid),
        blockers_(model.problem, schedule),
        in_the_way_(plan, graph, model, blockers_, grid) {
    for (std::size_t t = 0; t < graph.tasks.size(); ++t) task_by_id_[graph.tasks[t].id] = t;
    for (const job::Event& event : plan.events) event_by_id_[event.id] = &event;
  }

  void explain(job::Event& event) {
    kept_by_.clear();
    event.why = sentence(event);
    event.kept_by = std::move(kept_by_);
  }

 private:
  std::string sentence(const job::Event& event) {
    if (event.done) return "done, as recorded";
    if (event.fixed) return "at its fixed hour";
    const job::AfterEvent* last = binding(event);
    const std::size_t task = task_by_id_.at(event.id);
    const Instant opens = std::max(plan_.from, graph_.tasks[task].not_before.value_or(plan_.from));
    const Instant ready = last != nullptr ? std::max(last->earliest, opens) : opens;
    const std::string since = last != nullptr && last->earliest > opens ? reason(*last)
                              : opens > plan_.from                      ? opening(graph_.tasks[task], opens)
                                                                        : "";
    const Time soonest = grid_.up(ready);
    if (grid_.down(event.start) <= soonest) return "as soon as it may be: " + (since.empty() ? "nothing before it to wait for" : since);
    return since + (since.empty() ? "" : "; then ") + held_up(event, task, soonest);
  }

  std::string told(Obstacle obstacle) {
    if (obstacle.is_scarce) kept_by_ = obstacle.words;
    return std::move(obstacle.words);
  }

  /// What kept it, once nothing before it did.
  std::string held_up(const job::Event& event, std::size_t task, Time soonest) {
    const auto activity = static_cast<int>(task);
    const Time start = grid_.down(event.start), last = blockers_.last_open(activity, start - 1);
    if (last < soonest) return closed_or_air(event, soonest);
    if (auto obstacle = in_the_way_.at(task, last)) return told(*std::move(obstacle));
    if (graph_.tasks[task].earlier_start == event.start) return "kept where the earlier plan has it";
    if (event.kind == job::EventKind::turn && begins_at(event.end)) return "turned just before the next coat";
    const Time first = blockers_.soonest(activity, soonest, last);
    if (auto obstacle = before_that(task, soonest, first, start)) return told(*std::move(obstacle));
    const std::string could = "could begin " + when(grid_.instant(first));
    return in_a_visit(event) ? fmt::format("with the other work of this visit ({})", could) : "it " + could;
  }

  /// A plan leaves short stretches free. What was in the way until right before one says more than that it could begin then.
  std::optional<Obstacle> before_that(std::size_t task, Time soonest, Time first, Time start) {
    const Time shortly = Grid::steps(Minutes(30)), last = blockers_.last_open(static_cast<int>(task), first - 1);
    if (start - first > shortly || last < soonest) return std::nullopt;
    return in_the_way_.at(task, last);
  }

  [[nodiscard]] bool begins_at(Instant end) const {
    return std::any_of(plan_.events.begin(), plan_.events.end(),
                       [end](const job::Event& other) { return other.start == end && !other.product.empty(); });
  }

  /// Other work is done in the visit in which it begins.
  [[nodiscard]] bool in_a_visit(const job::Event& event) const {
    return std::any_of(plan_.visits.begin(), plan_.visits.end(), [&event](const job::Visit& visit) {
      return visit.from <= event.start && event.start < visit.until && visit.events.size() > 1;
    });
  }

  static const job::AfterEvent* binding(const job::Event& event) {
    const job::AfterEvent* last = nullptr;
    for (const job::AfterEvent& after : event.after) {
      if (last == nullptr || after.earliest > last->earliest) last = &after;
    }
    return last;
  }

  std::string opening(const Task& task, Instant opens) const {
    if (task.not_before_why.empty() || task.not_before != opens) return "not before " + when(opens);
    return task.not_before_why + " from " + when(opens);
  }

  std::string when(Instant t) const { return day_and_time(plan_.shop.zone.to_local(t)); }

  std::string reason(const job::AfterEvent& after) const {
    const auto other = event_by_id_.find(after.event);
    const std::string name = other == event_by_id_.end() ? after.event : name_with_load(*other->second);
    if (after.stage)
      return fmt::format("{} is {} at {}", name, after.reason.empty() ? job::dry_to(*after.stage) : after.reason, when(after.earliest));
    if (after.reason.empty()) return fmt::format("{} is over at {}", name, when(after.earliest));
    return fmt::format("{} at {}", after.reason, when(after.earliest));
  }

  std::string closed_or_air(const job::Event& event, Time soonest) {
    const Instant wanted = grid_.instant(soonest);
    const auto fits = std::any_of(plan_.working.begin(), plan_.working.end(), [&](const shop::WorkingTime& shift) {
      return shift.begin <= wanted && wanted + (event.end - event.start) <= shift.end;
    });
    if (fits && !event.product.empty()) {
      if (const auto air = finish::limit_exceeded(plan_.products.at(event.product), conditions(event), wanted,
                                                  wanted + (event.end - event.start), plan_.shop.units)) {
        return kept_by_ = "it has to wait: " + *air;
      }
    }
    const auto next =
        std::find_if(plan_.working.begin(), plan_.working.end(), [&](const shop::WorkingTime& s) { return s.begin > wanted; });
    const bool open = std::any_of(plan_.working.begin(), plan_.working.end(),
                                  [&](const shop::WorkingTime& s) { return s.begin <= wanted && wanted < s.end; });
    if (open) return "too little of the shift is left for it";
    if (next != plan_.working.end() && event.start > next->begin && !event.product.empty()) return air_at(event, next->begin);
    return "the shop is closed until its start";
  }

  std::string air_at(const job::Event& event, Instant opening) {
    const auto air = finish::limit_exceeded(plan_.products.at(event.product), conditions(event), opening,
                                            opening + (event.end - event.start), plan_.shop.units);
    if (!air) return "it fits into no earlier shift";
    return fmt::format("the shop is closed, and at {} it has to wait: {}", when(opening), *air);
  }

  finish::Conditions conditions(const job::Event& coat) const { return clocks_.conditions(graph_.tasks[task_by_id_.at(coat.id)]); }

  const job::Plan& plan_;
  const TaskGraph& graph_;
  Clocks& clocks_;
  const Grid& grid_;
  solver::Blockers blockers_;
  InTheWay in_the_way_;
  std::string kept_by_;  // of the event at hand
  std::map<std::string, std::size_t> task_by_id_;
  std::map<std::string, const job::Event*> event_by_id_;
};

}  // namespace

void explain_starts(job::Plan& plan, const TaskGraph& graph, const Model& model, const solver::Schedule& schedule, Clocks& clocks,
                    const Grid& grid) {
  Explainer explainer(plan, graph, model, schedule, clocks, grid);
  for (job::Event& event : plan.events) explainer.explain(event);
}

}  // namespace coatday::planner
