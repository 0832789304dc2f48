// Hands-on work: inside shifts, on the grid, not before its time, long enough, and not more people than the shop has.

#include <algorithm>

#include <fmt/core.h>

#include "checker/checks.h"

namespace coatday::checker {

namespace {

int items_of(const PlanFacts& facts, std::size_t i) {
  int items = 0;
  for (const auto& [part, count] : facts.loads.at(facts.events[i].load).items) items += count;
  return items;
}

SquareMetres area_of(const PlanFacts& facts, std::size_t i) {
  SquareMetres area;
  for (const std::size_t face : facts.event(i).faces) area += facts.plan.faces[face].area;
  return area;
}

/// The least hands-on time that the records allow, set-up and clean-up not in it.
Hours least_time(const PlanFacts& facts, std::size_t i) {
  const job::Event& e = facts.event(i);
  if (const shop::Work* work = facts.events[i].work) return work->takes;
  const finish::Step* step = facts.events[i].step;
  if (step == nullptr) return Hours(0);
  const int items = items_of(facts, i);
  Hours shared = Hours(facts.job.shop.handling) * items;  // that more people make shorter
  if (const finish::Product* product = facts.events[i].product) {
    const auto rate = e.method ? product->work_rates.find(*e.method) : product->work_rates.end();
    if (rate != product->work_rates.end()) shared += Hours(area_of(facts, i).value() / rate->second.value());
    return shared / std::max(1, e.people) + product->stand.value_or(Hours(0));
  }
  if (step->work_rate) shared += Hours(area_of(facts, i).value() / step->work_rate->value());
  if (step->takes) shared += *step->takes * items;
  Hours baking(0);
  for (const finish::BakeStage& stage : step->bake) baking += stage.duration;
  return shared / std::max(1, e.people) + baking;
}

/// A coat of the same product near enough to share the pot and the tools: before it, or on either side.
bool shares(const PlanFacts& facts, std::size_t i, bool before_alone) {
  const job::Event& e = facts.event(i);
  const Hours near = facts.job.shop.sharing_gap + rounding;
  const auto follows = [&](const job::Event& first, const job::Event& second) {
    const Hours gap = second.start - first.end;
    return gap >= -Hours(rounding) && gap <= near;
  };
  for (std::size_t k = 0; k < facts.events.size(); ++k) {
    const job::Event& other = facts.event(k);
    if (k == i || other.product != e.product) continue;
    if (follows(other, e) || (!before_alone && follows(e, other))) return true;
  }
  return false;
}

class HourJudge {
 public:
  HourJudge(const PlanFacts& facts, std::size_t event, Breaches& out) : facts_(facts), i_(event), e_(facts.event(event)), out_(out) {}

  void run() {
    const bool fixed = facts_.events[i_].work != nullptr && facts_.events[i_].work->start.has_value();
    long_enough();
    if (facts_.coat(i_)) session();
    if (fixed) return;
    if (e_.start < facts_.plan.from) report("before-from", "the plan begins " + facts_.when(facts_.plan.from));
    if (e_.piece) not_before_its_order();
    if (e_.start.time_since_epoch() % grid != std::chrono::seconds(0)) report("off-grid", "starts come in steps of 5 min");
    if (!inside_hours()) report("outside-hours", "nobody is at work");
  }

 private:
  void report(std::string code, const std::string& message) { out_.push_back({std::move(code), facts_.name(i_) + ": " + message}); }

  void not_before_its_order() {
    const auto& own = facts_.job.order.pieces[*e_.piece].start;
    const auto& start = own ? own : facts_.job.order.start;
    if (start && e_.start < *start) report("before-order-start", "the order begins " + facts_.when(*start));
  }

  bool inside_hours() const {
    const auto holds = [](const shop::WorkingTime& w, Instant from, Instant until) {
      return w.begin <= from + rounding && until <= w.end + rounding;
    };
    const auto any = [&](Instant from, Instant until) {
      return std::any_of(facts_.working.begin(), facts_.working.end(), [&](const shop::WorkingTime& w) { return holds(w, from, until); });
    };
    return facts_.pauses(i_) ? any(e_.start, e_.start + grid) && any(e_.end - grid, e_.end) : any(e_.start, e_.end);
  }

  void long_enough() {
    const Hours time = Hours(facts_.hands_on(i_)) - e_.set_up - e_.clean_up;
    const Hours least = least_time(facts_, i_);
    if (time + rounding < least) report("too-short", fmt::format("{} at work, it takes {}", format_span(time), format_span(least)));
  }

  void session() {
    const finish::Product& product = *facts_.events[i_].product;
    if (e_.set_up + rounding < product.set_up && !shares(facts_, i_, true)) {
      report("set-up-left-out", "nothing that it could share its set-up with goes before");
    }
    if (e_.clean_up + rounding < product.clean_up && !shares(facts_, i_, false)) {
      report("clean-up-left-out", "nothing that it could share its clean-up with is near");
    }
  }

  const PlanFacts& facts_;
  std::size_t i_;
  const job::Event& e_;
  Breaches& out_;
};

struct Change {
  Instant at;
  int people = 0;
  std::size_t event = 0;
};

}  // namespace

void check_hours(const PlanFacts& facts, Breaches& out) {
  for (std::size_t i = 0; i < facts.events.size(); ++i) {
    if (!facts.event(i).done) HourJudge(facts, i, out).run();
  }
}

void check_people(const PlanFacts& facts, Breaches& out) {
  std::vector<Change> changes;
  for (std::size_t i = 0; i < facts.events.size(); ++i) {
    if (facts.event(i).done) continue;
    for (const shop::WorkingTime& w : facts.at_work(i)) {
      changes.push_back({w.begin, facts.event(i).people, i});
      changes.push_back({w.end, -facts.event(i).people, i});
    }
  }
  std::sort(changes.begin(), changes.end(),
            [](const Change& a, const Change& b) { return std::tie(a.at, a.people) < std::tie(b.at, b.people); });
  int busy = 0;
  for (const Change& change : changes) {
    busy += change.people;
    if (change.people <= 0 || busy <= facts.job.shop.people) continue;
    out.push_back({"person-twice", fmt::format("{}: at {} the work takes {} people, the shop has {}", facts.name(change.event),
                                               facts.when(change.at), busy, facts.job.shop.people)});
  }
}

}  // namespace coatday::checker
