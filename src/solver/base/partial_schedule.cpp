#include "solver/base/partial_schedule.h"

#include <algorithm>

namespace coatday::solver {

PartialSchedule::PartialSchedule(const Network& network)
    : network_(network),
      placed_(at(network.size), 0),
      runs_(at(network.size)),
      turns_(at(network.size), 0),
      reserved_(network.problem.holds.size()),
      use_(network.problem.resources.size()),
      covered_(2 * network.problem.exclusions.size()),
      layout_(network.problem) {
  int families = 0;
  for (const Activity& a : network.problem.activities) families = std::max(families, a.family + 1);
  ends_.resize(at(families));
}

Interval PartialSchedule::carried(const Span& span, Time start, Time end) {
  return {start - span.lead, span.tail ? span.tail->at(start) : end};
}

void PartialSchedule::use(int a, int sign) {
  const Assignment& run = runs_[at(a)];
  for (const Demand& demand : network_.demands[a]) use_[at(demand.resource)].add(run.start, run.end, sign * demand.amount);
  for (const Carried& c : network_.carried[a]) {
    const Interval time = carried(*c.span, run.start, run.end);
    covered_[2 * at(c.exclusion) + (c.right ? 1 : 0)].add(time.begin, time.end, sign);
  }
}

void PartialSchedule::place(const Candidate& c) {
  note_run(c.activity);
  placed_[at(c.activity)] = 1;
  runs_[at(c.activity)] = {c.start, c.end, true, c.shared};
  turns_[at(c.activity)] = ++turn_;
  use(c.activity, 1);
  const int family = network_.activity(c.activity).family;
  if (family < 0) return;
  const std::pair<Time, int> entry{c.end, c.activity};
  ends_[at(family)].insert(std::upper_bound(ends_[at(family)].begin(), ends_[at(family)].end(), entry), entry);
}

void PartialSchedule::remove(int a) {
  note_run(a);
  use(a, -1);
  placed_[at(a)] = 0;
  const int family = network_.activity(a).family;
  if (family < 0) return;
  const std::pair<Time, int> entry{runs_[at(a)].end, a};
  ends_[at(family)].erase(std::lower_bound(ends_[at(family)].begin(), ends_[at(family)].end(), entry));
}

void PartialSchedule::reserve(int hold, Reserved what) {
  note_hold(hold);
  if (what.choice >= 0) {
    const Demand& demand = network_.hold(hold).choices[at(what.choice)];
    use_[at(demand.resource)].add(what.time.begin, what.time.end, demand.amount);
    if (layout_.covers(demand.resource) && what.time.begin < what.time.end) {
      if (what.stretch.segments.empty()) what.stretch = layout_.room(demand, what.time).value();
      layout_.lay(demand.resource, hold, what.time, what.stretch);
    }
  }
  reserved_[at(hold)] = std::move(what);
}

PartialSchedule::Reserved PartialSchedule::lift(int hold) {
  note_hold(hold);
  Reserved was = std::move(reserved_[at(hold)]);
  reserved_[at(hold)] = {};
  if (was.choice < 0) return was;
  const Demand& demand = network_.hold(hold).choices[at(was.choice)];
  use_[at(demand.resource)].add(was.time.begin, was.time.end, -demand.amount);
  layout_.lift(demand.resource, hold, was.time);
  return was;
}

void PartialSchedule::note_run(int a) {
  if (!on_trial_ || run_noted_[at(a)] != 0) return;
  run_noted_[at(a)] = 1;
  runs_before_.emplace_back(a, placed(a) ? std::optional(run(a)) : std::nullopt);
}

void PartialSchedule::note_hold(int hold) {
  if (!on_trial_ || hold_noted_[at(hold)] != 0) return;
  hold_noted_[at(hold)] = 1;
  holds_before_.emplace_back(hold, reserved(hold));
}

void PartialSchedule::begin_trial() {
  run_noted_.resize(placed_.size());
  hold_noted_.resize(reserved_.size());
  on_trial_ = true;
}

void PartialSchedule::accept() {
  for (const auto& [a, run] : runs_before_) run_noted_[at(a)] = 0;
  for (const auto& [hold, what] : holds_before_) hold_noted_[at(hold)] = 0;
  runs_before_.clear();
  holds_before_.clear();
  on_trial_ = false;
}

void PartialSchedule::undo() {
  on_trial_ = false;
  for (const auto& [hold, was] : holds_before_) lift(hold);
  for (const auto& [a, was] : runs_before_) {
    if (placed(a)) remove(a);
  }
  for (const auto& [a, was] : runs_before_) {
    if (was) place({a, was->start, was->end, was->shared});
  }
  for (const auto& [hold, was] : holds_before_) reserve(hold, was);
  accept();
}

std::vector<int> PartialSchedule::changed() const {
  std::vector<int> all;
  for (const auto& [a, run] : runs_before_) all.push_back(a);
  return all;
}

bool PartialSchedule::sharing(int a, Time start) const {
  const auto& ends = ends_[at(network_.activity(a).family)];
  auto next = std::lower_bound(ends.begin(), ends.end(), std::pair{start - network_.problem.sharing_gap, -1});
  while (next != ends.end() && next->second == a) ++next;
  return next != ends.end() && next->first <= start;
}

}  // namespace coatday::solver
