// Lags, remedies of missed maximum lags, shared set-ups and exclusions.

#include <algorithm>

#include "solver/base/network.h"
#include "solver/clause_learning/domain_propagator.h"
#include "solver/clause_learning/model.h"

namespace coatday::solver::clause_learning {

void Model::add_lags() {
  for (const MinimumLag& lag : problem_.minimum_lags) {
    minimum(moment(lag.from, lag.bound), run(lag.to).start, present({lag.from.activity, lag.to}));
  }
  std::vector<std::vector<Literal>> missed(runs_.size());  // by remedy
  for (const MaximumLag& lag : problem_.maximum_lags) {
    if (!lag.remedy) {
      maximum(moment(lag.from, lag.bound), run(lag.to).start, present({lag.from.activity, lag.to}));
    } else if (problem_.activities[at(*lag.remedy)].optional) {
      add_remedy(lag, missed);
    }
  }
  for (int i = 0; i < runs(); ++i) {
    if (!problem_.activities[at(i)].optional) continue;
    std::vector<Literal>& any = missed[at(i)];
    any.push_back(no(run(i).present));
    engine.clause(any);
  }
}

// Missed or kept; its remedy takes part just when one of those that it is for is missed.
void Model::add_remedy(const MaximumLag& lag, std::vector<std::vector<Literal>>& missed) {
  const Var miss = engine.ask();
  missed[at(*lag.remedy)].push_back(yes(miss));
  Conditions kept = present({lag.from.activity, lag.to});
  for (const Literal there : kept) engine.clause({no(miss), there});
  kept.push_back(no(miss));
  maximum(moment(lag.from, lag.bound), run(lag.to).start, kept);
  minimum(moment(lag.from, lag.bound ? compose(shift(1), lag.bound) : shift(1)), run(lag.to).start, {yes(miss)});
  engine.clause({no(miss), yes(run(*lag.remedy).present)});
}

// Whoever shares has a partner of the family that ends in time before it.
void Model::add_partners(int i) {
  const Run& r = run(i);
  if (r.shared < 0) return;
  if (r.present >= 0) engine.clause({no(r.shared), yes(r.present)});
  std::vector<Literal> any{no(r.shared)};
  for (int k = 0; k < runs(); ++k) {
    if (k == i || problem_.activities[at(k)].family != problem_.activities[at(i)].family) continue;
    const Interval ends = reach({k, 0, nullptr});  // [first end, last end]
    if (ends.begin > engine.trail.high(r.start) || ends.end + problem_.sharing_gap < engine.trail.low(r.start)) continue;
    const Var partner = engine.ask();
    any.push_back(yes(partner));
    engine.clause({no(partner), yes(r.shared)});
    for (const Literal there : present({k})) engine.clause({no(partner), there});
    minimum(moment({k, Edge::end}), r.start, {yes(partner)});
    maximum(moment({k, Edge::end}, shift(problem_.sharing_gap)), r.start, {yes(partner)});
  }
  engine.clause(any);
}

void Model::add_exclusion(const Exclusion& exclusion) {
  for (const Span& left : exclusion.left) {
    for (const Span& right : exclusion.right) {
      if (left.activity != right.activity) exclude(left, right);
    }
  }
}

// The soonest and the latest end of a span, whatever its activity does.
Interval Model::reach(const Span& span) const {
  const Activity& a = problem_.activities[at(span.activity)];
  const Run& r = run(span.activity);
  const Time low = engine.trail.low(r.start), high = engine.trail.high(r.start);
  if (span.tail) return {span.tail->at(low), span.tail->at(high)};
  Interval result{end_of(a, low, false), end_of(a, high, false)};
  if (r.shared < 0) return result;
  return {std::min(result.begin, end_of(a, low, true)), std::max(result.end, end_of(a, high, true))};
}

// Whether the spans cannot overlap, as the one is always over before the other begins.
bool Model::always_before(const Span& first, const Span& second) const {
  return reach(first).end <= engine.trail.low(run(second.activity).start) - second.lead;
}

// One ends before the other begins, unless one is empty or takes no part.
void Model::exclude(const Span& left, const Span& right) {
  if (always_before(left, right) || always_before(right, left)) return;
  std::vector<Literal> any;
  for (const Literal there : present({left.activity, right.activity})) any.push_back(!there);
  for (const Span* span : {&left, &right}) {
    if (const auto nothing = empty(*span)) any.push_back(*nothing);
  }
  const auto before = [&](const Span& first, const Span& second) {
    const Var order = engine.ask();
    const Function lead = second.lead == 0 ? nullptr : shift(second.lead);
    const Function tail = !first.tail ? lead : !lead ? first.tail : compose(lead, first.tail);
    minimum(moment({first.activity, first.tail ? Edge::start : Edge::end}, tail), run(second.activity).start, {yes(order)});
    any.push_back(yes(order));
  };
  before(left, right);
  before(right, left);
  engine.clause(any);
}

// A question whose `yes` makes the span empty; none where it never is.
std::optional<Literal> Model::empty(const Span& span) {
  const auto [found, is_new] = empty_.try_emplace(&span);
  if (is_new) found->second = find_empty(span);
  return found->second;
}

std::optional<Literal> Model::find_empty(const Span& span) {
  const Activity& a = problem_.activities[at(span.activity)];
  const Run& r = run(span.activity);
  Intervals spans_nothing;
  for (Time t = engine.trail.low(r.start); t <= engine.trail.high(r.start); ++t) {
    const bool alone = (span.tail ? span.tail->at(t) : end_of(a, t, false)) <= t - span.lead;
    const bool shared = !span.tail && r.shared >= 0 && end_of(a, t, true) <= t - span.lead;
    if (!alone && !shared) continue;
    if (!spans_nothing.empty() && spans_nothing.back().end == t) {
      ++spans_nothing.back().end;
    } else {
      spans_nothing.push_back({t, t + 1});
    }
  }
  if (spans_nothing.empty()) return std::nullopt;
  const Var nothing = engine.ask();
  domains_.push_back(std::make_unique<Intervals>(std::move(spans_nothing)));
  auto propagator = std::make_unique<DomainPropagator>(r.start, domains_.back().get(), Conditions{yes(nothing)});
  const auto wakes = propagator->wakes();
  engine.add(std::move(propagator), wakes);
  if (!span.tail && r.end >= 0) maximum({r.start, shift(-span.lead)}, r.end, {yes(nothing)});
  return yes(nothing);
}

}  // namespace coatday::solver::clause_learning
