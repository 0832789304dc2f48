#include "report/sections/event_facts.h"

#include <fmt/core.h>

#include <algorithm>

#include "job/stages.h"
#include "quantity/text.h"
#include "report/sections/cautions.h"
#include "report/sections/faces.h"
#include "report/sections/vapour.h"
#include "report/words.h"

namespace coatday::report {
namespace {

std::string subject(const job::Plan& plan, const job::Event& event) {
  if (!event.faces.empty() && event.kind != job::EventKind::turn) return face_text(plan, event.faces);
  const bool several = plan.pieces.size() > 1 && event.piece;
  if (event.load.empty()) return several ? plan.pieces[*event.piece].name : "";
  return several ? plan.pieces[*event.piece].name + " / " + event.load : event.load;
}

std::string how(const job::Event& event, Units units) {
  std::vector<std::string> facts;
  if (event.method) facts.emplace_back(finish::word(*event.method));
  if (event.grit) facts.push_back(unbroken(fmt::format("grit {}", *event.grit)));
  if (event.volume) facts.push_back(volume_text(*event.volume, units));
  if (event.mixes > 1) facts.push_back(unbroken(fmt::format("in {} mixes", event.mixes)));
  for (const finish::BakeStage& stage : event.bake) {
    facts.push_back(unbroken(format_span(stage.duration) + " at " + format_temperature(stage.temperature, units)));
  }
  facts.push_back(unbroken(counted(static_cast<std::size_t>(std::max(event.people, 0)), "person", "people")));
  if (event.hot) facts.push_back(unbroken("hot work"));
  if (event.dust == shop::Dust::heavy) facts.push_back(unbroken("heavy dust"));
  if (event.fixed) facts.push_back(unbroken("fixed hour"));
  if (event.done) facts.emplace_back("done");
  return joined(facts, ", ");
}

struct Next {
  std::string name;
  std::string load;
  Instant earliest;
  std::optional<Instant> latest;
};

std::optional<Instant> latest_after(const job::Event& next, const std::string& event) {
  std::optional<Instant> latest;
  for (const job::BeforeEvent& limit : next.before) {
    if (limit.event == event && (!latest || limit.latest < *latest)) latest = limit.latest;
  }
  return latest;
}

// What may follow on this event, the earliest of each name: the next steps of its own load, else other work; at most two.
std::vector<Next> followers(const job::Plan& plan, const job::Event& event) {
  std::vector<Next> found;
  for (const job::Event& next : plan.events) {
    for (const job::AfterEvent& wait : next.after) {
      if (wait.event != event.id || wait.earliest <= event.end) continue;
      const auto same = [&next](const Next& f) { return f.name == next.name; };
      if (std::none_of(found.begin(), found.end(), same))
        found.push_back({next.name, next.load, wait.earliest, latest_after(next, event.id)});
    }
  }
  std::stable_sort(found.begin(), found.end(), [](const Next& a, const Next& b) { return a.earliest < b.earliest; });
  const auto elsewhere = [&event](const Next& f) { return f.load != event.load; };
  if (!std::all_of(found.begin(), found.end(), elsewhere)) std::erase_if(found, elsewhere);
  if (found.size() > 2) found.resize(2);
  return found;
}

std::string next_text(const job::Plan& plan, const job::Event& event) {
  const LocalDay today = local_day(event.start, plan.shop.zone);
  std::vector<std::string> texts;
  for (const Next& next : followers(plan, event)) {
    const std::string until = next.latest ? ", until " + instant_text(*next.latest, plan.shop.zone) : "";
    texts.push_back(next.name + " from " + instant_text(next.earliest, plan.shop.zone, today) + until);
  }
  return joined(texts, "; ");
}

// "rack 1" to "rack 4" until the same time read "rack 1-4 until ...".
struct Run {
  std::string name;
  int first = 0, last = 0;
  Instant until;
  std::string stretch;  // of the only place

  [[nodiscard]] std::string text() const {
    if (first != last) return fmt::format("{} {}-{}", name, first, last);
    return joined({first == 0 ? name : fmt::format("{} {}", name, first), stretch}, stretch.empty() ? "" : " ");
  }
};

Run run_of(const job::Plan& plan, const job::PlaceUse& use) {
  const std::size_t space = use.place.rfind(' ');
  const bool numbered =
      space != std::string::npos && space + 1 < use.place.size() &&
      std::all_of(use.place.begin() + static_cast<std::ptrdiff_t>(space) + 1, use.place.end(), [](char c) { return c >= '0' && c <= '9'; });
  if (!numbered) return {use.place, 0, 0, use.until, stretch_text(plan, use)};
  const int number = parse_count(use.place.substr(space + 1)).value_or(0);
  return {use.place.substr(0, space), number, number, use.until, stretch_text(plan, use)};
}

std::vector<Run> runs_of(const job::Plan& plan, const job::Event& event) {
  std::vector<Run> runs;
  for (const job::PlaceUse& use : plan.places) {
    if (use.event >= plan.events.size() || &plan.events[use.event] != &event) continue;
    const Run next = run_of(plan, use);
    const bool goes_on =
        !runs.empty() && runs.back().name == next.name && runs.back().until == next.until && next.first == runs.back().last + 1;
    if (goes_on && next.first > 0) {
      runs.back().last = next.last;
    } else {
      runs.push_back(next);
    }
  }
  return runs;
}

/// Whether the load is worked on soon after it leaves its place: then nobody puts it anywhere.
bool goes_on_soon(const job::Plan& plan, const job::Event& event, Instant place_left) {
  constexpr std::chrono::hours soon{1};  // judgement
  const std::string load = job::load_key(event.step_id);
  return std::any_of(plan.events.begin(), plan.events.end(), [&](const job::Event& next) {
    return next.start > event.start && next.end >= place_left && next.start < place_left + soon && job::load_key(next.step_id) == load;
  });
}

/// What lay on all its places stands aside; until dry to pack where no step comes before.
std::string aside_text(const job::Plan& plan, const job::Event& event) {
  std::optional<Instant> packed;
  for (const job::PlaceUse& use : plan.places) {
    if (use.event >= plan.events.size() || &plan.events[use.event] != &event) continue;
    if (!use.then || goes_on_soon(plan, event, use.until)) return "";
    packed = use.then->until;
  }
  if (!packed) return "";
  const auto product = plan.products.find(event.product);
  std::optional<Instant> dry;
  if (product != plan.products.end()) dry = event.stages.expected[job::stackable(product->second)];
  const bool until_dry = dry && *packed >= *dry;
  const LocalDay today = local_day(event.start, plan.shop.zone);
  return "; then stood aside, spaced" +
         (until_dry ? "; not stacked before " + instant_text(*dry, plan.shop.zone, today) + " (dry to pack)" : "");
}

std::string resting_text(const job::Plan& plan, const job::Event& event) {
  const LocalDay today = local_day(event.start, plan.shop.zone);
  std::vector<std::string> places;
  for (const Run& run : runs_of(plan, event)) places.push_back(run.text() + " until " + instant_text(run.until, plan.shop.zone, today));
  if (!places.empty()) return "dries on " + listed(places) + aside_text(plan, event);
  if (!event.support || !job::is_coat(event.kind)) return "";
  return *event.support == piece::Support::laid ? "dries as it lies" : "dries on " + std::string(word(*event.support));
}

std::string wet_text(const job::Plan& plan, const job::Event& event) {
  const LocalDay today = local_day(event.start, plan.shop.zone);
  std::vector<std::string> facts;
  if (event.wipe_by) facts.push_back("wipe off by " + instant_text(*event.wipe_by, plan.shop.zone, today));
  const auto& tack_free = event.stages.expected[finish::Stage::tack_free];
  if (tack_free) facts.push_back("wet until " + instant_text(*tack_free, plan.shop.zone, today));
  return joined(facts, "; ");
}

// The last coat has no next step: what is waited for then is the hand.
std::string last_text(const job::Plan& plan, const job::Event& event) {
  const LocalDay today = local_day(event.start, plan.shop.zone);
  std::vector<std::string> facts;
  for (const finish::Stage stage : {finish::Stage::handle, finish::Stage::pack}) {
    if (event.stages.expected[stage])
      facts.push_back(stage_text(stage) + " " + instant_text(*event.stages.expected[stage], plan.shop.zone, today));
  }
  return joined(facts, ", ");
}

std::string ends_text(const job::Plan& plan, const job::Event& event) {
  const bool same_day = local_day(event.end, plan.shop.zone) == local_day(event.start, plan.shop.zone);
  return same_day ? "" : "ends " + instant_text(event.end, plan.shop.zone);
}

}  // namespace

EventFacts event_facts(const job::Plan& plan, const job::Event& event, Units units) {
  EventFacts facts;
  facts.subject = subject(plan, event);
  facts.how = how(event, units);
  facts.ends = ends_text(plan, event);
  facts.surface = surface_text(plan, event, units).value_or("");
  facts.wet = wet_text(plan, event);
  facts.next = next_text(plan, event);
  if (facts.next.empty() && job::is_coat(event.kind)) facts.last = last_text(plan, event);
  facts.resting = resting_text(plan, event);
  facts.vapour = vapour_text(event, units);
  for (const std::string& key : event.cautions) facts.cautions.push_back(short_caution(plan, key));
  return facts;
}

std::string joined(const std::vector<std::string>& facts, std::string_view between) {
  std::string out;
  for (const std::string& fact : facts) {
    if (!out.empty()) out += between;
    out += fact;
  }
  return out;
}

}  // namespace coatday::report
