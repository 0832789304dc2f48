#include "solver/clause_learning/model_variables.h"

#include <algorithm>

#include "solver/base/calendar.h"
#include "solver/base/network.h"
#include "solver/clause_learning/domain_propagator.h"

namespace coatday::solver::clause_learning {
namespace {

class Earlier final : public MonotoneFunction {
 public:
  Earlier(Function one, Function other) : one_(std::move(one)), other_(std::move(other)) {}
  [[nodiscard]] Time at(Time t) const override { return std::min(value_of(one_, t), value_of(other_, t)); }

 private:
  Function one_, other_;
};

Function chain(const Function& outer, const Function& inner) { return !outer ? inner : !inner ? outer : compose(outer, inner); }

// The part of the intervals up to a time.
Intervals until(Intervals intervals, Time last) {
  std::erase_if(intervals, [last](const Interval& i) { return i.begin > last; });
  if (!intervals.empty()) intervals.back().end = std::min(intervals.back().end, last + 1);
  return intervals;
}

// The allowed starts that end by the horizon.
Intervals in_time(const Activity& a, bool shared, Time horizon) {
  Intervals result = merged(starts_of(a, shared));
  if (result.empty()) return result;
  return until(result, latest_of(a, Edge::end, shared, horizon, result.front().begin, result.back().end - 1));
}

}  // namespace

ModelVariables::ModelVariables(const Problem& given, Engine& given_engine) : problem(given), engine(given_engine) {
  const int count = static_cast<int>(problem.activities.size());
  add_alternatives();
  for (int i = 0; i < count; ++i) add_activity(i);
  for (int i = 0; i < count; ++i) add_ends(i);
}

const Intervals* ModelVariables::store(Intervals intervals) {
  stored_.push_back(std::make_unique<Intervals>(std::move(intervals)));
  return stored_.back().get();
}

// Takes exactly one branch. An activity in a single branch takes part with it.
void ModelVariables::add_alternatives() {
  for (const Alternative& alternative : problem.alternatives) {
    std::vector<Var>& branches = branches_.emplace_back();
    std::map<int, std::vector<Literal>> with;  // by activity: its branches
    std::vector<Literal> any;
    for (const std::vector<int>& branch : alternative.branches) {
      const Var taken = engine.ask();
      for (const Var other : branches) engine.clause({no(taken), no(other)});
      branches.push_back(taken);
      any.push_back(yes(taken));
      for (const int a : branch) with[a].push_back(yes(taken));
    }
    engine.clause(any);
    for (const auto& [activity, where] : with) {
      if (where.size() == alternative.branches.size()) continue;
      const Var there = in_alternative_[activity] = where.size() == 1 ? variable(where.front()) : engine.ask();
      if (where.size() == 1) continue;
      std::vector<Literal> one{no(there)};
      one.insert(one.end(), where.begin(), where.end());
      engine.clause(one);
      for (const Literal branch : where) engine.clause({!branch, yes(there)});
    }
  }
}

void ModelVariables::add_activity(int i) {
  const Activity& a = problem.activities[at(i)];
  Intervals domain = in_time(a, false, problem.horizon);
  if (may_share(a)) {
    const Intervals shared = in_time(a, true, problem.horizon);
    domain.insert(domain.end(), shared.begin(), shared.end());
    domain = merged(domain);
  }
  const bool possible = !domain.empty();
  if (!possible) domain = {{0, 1}};
  const Intervals& kept = *store(std::move(domain));
  Run run;
  run.start = engine.add(kept.front().begin, kept.back().end - 1, &kept);
  if (a.optional) run.present = engine.ask();
  if (const auto there = in_alternative_.find(i); there != in_alternative_.end()) run.present = there->second;
  if (may_share(a)) run.shared = engine.ask();
  runs_.push_back(run);
  if (possible) return;
  engine.clause(run.present >= 0 ? std::vector{no(run.present)} : std::vector<Literal>{});
}

// An activity with two possible ends has a variable for its end.
void ModelVariables::add_ends(int i) {
  const Activity& a = problem.activities[at(i)];
  Run& run = runs_[at(i)];
  if (run.shared < 0) return;
  const Time low = engine.trail.low(run.start), high = engine.trail.high(run.start);
  run.end = engine.add(std::min(end_of(a, low, false), end_of(a, low, true)), problem.horizon);
  if (engine.trail.low(run.end) > problem.horizon)
    return engine.clause(run.present >= 0 ? std::vector{no(run.present)} : std::vector<Literal>{});
  const Conditions there = present({i});
  for (const bool shared : {false, true}) {
    const Mapping end(shared ? a.end_shared : a.end, low, high);
    Conditions conditions = there;
    conditions.push_back(shared ? yes(run.shared) : no(run.shared));
    engine.arcs.minimum(run.start, end, run.end, conditions);
    engine.arcs.maximum(run.start, end, run.end, conditions);
    engine.add(std::make_unique<DomainPropagator>(run.start, store(merged(starts_of(a, shared))), conditions));
  }
  const Function unshared = a.end ? a.end : shift(0);
  engine.arcs.minimum(run.start, Mapping(std::make_shared<Earlier>(unshared, a.end_shared), low, high), run.end, there);
  engine.arcs.maximum(run.start, Mapping(later_of(unshared, a.end_shared), low, high), run.end, there);
}

Moment ModelVariables::moment(const Point& point, const Function& then) const {
  const Run& r = run(point.activity);
  if (point.edge == Edge::start) return {r.start, then};
  if (r.end >= 0) return {r.end, then};
  return {r.start, chain(then, problem.activities[at(point.activity)].end)};
}

Mapping ModelVariables::mapping(const Moment& m) const { return {m.f, engine.trail.low(m.x), engine.trail.high(m.x)}; }

Conditions ModelVariables::present(std::initializer_list<int> activities) const {
  Conditions result;
  for (const int i : activities) {
    const Var there = run(i).present;
    if (there >= 0 && std::find(result.begin(), result.end(), yes(there)) == result.end()) result.push_back(yes(there));
  }
  return result;
}

void ModelVariables::minimum(const Moment& m, Var y, Conditions conditions) {
  engine.arcs.minimum(m.x, mapping(m), y, std::move(conditions));
}

void ModelVariables::maximum(const Moment& m, Var y, Conditions conditions) {
  engine.arcs.maximum(m.x, mapping(m), y, std::move(conditions));
}

Interval ModelVariables::reach(const Span& span) const {
  const Activity& a = problem.activities[at(span.activity)];
  const Run& r = run(span.activity);
  const Time low = engine.trail.low(r.start), high = engine.trail.high(r.start);
  if (span.tail) return {span.tail->at(low), span.tail->at(high)};
  Interval result{end_of(a, low, false), end_of(a, high, false)};
  if (r.shared < 0) return result;
  return {std::min(result.begin, end_of(a, low, true)), std::max(result.end, end_of(a, high, true))};
}

}  // namespace coatday::solver::clause_learning
