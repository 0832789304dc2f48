#include "solver/clause_learning/model_exclusions.h"

#include <map>
#include <optional>

#include "solver/base/network.h"
#include "solver/clause_learning/domain_propagator.h"

namespace coatday::solver::clause_learning {
namespace {

class Exclusions {
 public:
  explicit Exclusions(ModelVariables& model) : model_(model) {}
  void add(const Exclusion&);

 private:
  void exclude(const Span&, const Span&);
  void before(const Span& first, const Span& second, Var order);
  [[nodiscard]] bool always_before(const Span& first, const Span& second) const;
  [[nodiscard]] std::optional<Literal> empty(const Span&);
  [[nodiscard]] std::optional<Literal> find_empty(const Span&);

  struct Tail {
    Var x;
    Mapping end;
  };
  const Tail& tail(const Span&, Time lead);

  ModelVariables& model_;
  std::map<const Span*, std::optional<Literal>> empty_;
  std::map<std::pair<const Span*, Time>, Tail> tails_;  ///< each looks at all times of its span, and many spans follow it
};

void Exclusions::add(const Exclusion& exclusion) {
  for (const Span& left : exclusion.left) {
    for (const Span& right : exclusion.right) {
      if (left.activity != right.activity) exclude(left, right);
    }
  }
}

// Whether the first span always ends before the second begins.
bool Exclusions::always_before(const Span& first, const Span& second) const {
  return model_.reach(first).end <= model_.engine.trail.low(model_.run(second.activity).start) - second.lead;
}

// One span ends before the other begins, unless one is empty or takes no part.
void Exclusions::exclude(const Span& left, const Span& right) {
  if (always_before(left, right) || always_before(right, left)) return;
  std::vector<Literal> any;
  for (const Literal there : model_.present({left.activity, right.activity})) any.push_back(!there);
  for (const Span* span : {&left, &right}) {
    if (const auto nothing = empty(*span)) any.push_back(*nothing);
  }
  for (const auto& [first, second] : {std::pair(&left, &right), std::pair(&right, &left)}) {
    const Var order = model_.engine.ask();
    before(*first, *second, order);
    any.push_back(yes(order));
  }
  model_.engine.clause(any);
}

void Exclusions::before(const Span& first, const Span& second, Var order) {
  const Tail& from = tail(first, second.lead);
  model_.engine.arcs.minimum(from.x, from.end, model_.run(second.activity).start, {yes(order)});
}

// The end of the span, and so much later.
const Exclusions::Tail& Exclusions::tail(const Span& span, Time lead) {
  const auto known = tails_.find({&span, lead});
  if (known != tails_.end()) return known->second;
  const Function later = lead == 0 ? nullptr : shift(lead);
  const Function then = !span.tail ? later : !later ? span.tail : compose(later, span.tail);
  const Moment moment = model_.moment({span.activity, span.tail ? Edge::start : Edge::end}, then);
  return tails_.emplace(std::pair(&span, lead), Tail{moment.x, model_.mapping(moment)}).first->second;
}

// A question with a `yes` that makes the span empty. Returns nothing if the span never is.
std::optional<Literal> Exclusions::empty(const Span& span) {
  const auto [found, is_new] = empty_.try_emplace(&span);
  if (is_new) found->second = find_empty(span);
  return found->second;
}

std::optional<Literal> Exclusions::find_empty(const Span& span) {
  const Activity& a = model_.problem.activities[at(span.activity)];
  const Run& r = model_.run(span.activity);
  Intervals spans_nothing;
  for (Time t = model_.engine.trail.low(r.start); t <= model_.engine.trail.high(r.start); ++t) {
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
  const Var nothing = model_.engine.ask();
  model_.engine.add(std::make_unique<DomainPropagator>(r.start, model_.store(std::move(spans_nothing)), Conditions{yes(nothing)}));
  if (!span.tail && r.end >= 0) model_.maximum({r.start, shift(-span.lead)}, r.end, {yes(nothing)});
  return yes(nothing);
}

}  // namespace

void add_exclusions(ModelVariables& model) {
  Exclusions exclusions(model);
  for (const Exclusion& exclusion : model.problem.exclusions) exclusions.add(exclusion);
}

}  // namespace coatday::solver::clause_learning
