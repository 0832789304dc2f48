#include "solver/clause_learning/model_lags.h"

namespace coatday::solver::clause_learning {
namespace {

// The window is missed or kept. The remedy takes part exactly if one of its windows is missed.
void add_remedy(ModelVariables& model, const MaximumLag& lag, std::vector<std::vector<Literal>>& missed) {
  const Var miss = model.engine.ask();
  missed[at(*lag.remedy)].push_back(yes(miss));
  Conditions kept = model.present({lag.from.activity, lag.to});
  for (const Literal there : kept) model.engine.clause({no(miss), there});
  kept.push_back(no(miss));
  model.maximum(model.moment(lag.from, lag.bound), model.run(lag.to).start, kept);
  model.minimum(model.moment(lag.from, lag.bound ? compose(shift(1), lag.bound) : shift(1)), model.run(lag.to).start, {yes(miss)});
  model.engine.clause({no(miss), yes(model.run(*lag.remedy).present)});
}

void add_partners_of(ModelVariables& model, int i) {
  const Run& r = model.run(i);
  if (r.shared < 0) return;
  if (r.present >= 0) model.engine.clause({no(r.shared), yes(r.present)});
  std::vector<Literal> any{no(r.shared)};
  for (int k = 0; k < model.runs(); ++k) {
    if (k == i || model.problem.activities[at(k)].family != model.problem.activities[at(i)].family) continue;
    const Interval ends = model.reach({k, 0, nullptr});  // [first end, last end]
    if (ends.begin > model.engine.trail.high(r.start) || ends.end + model.problem.sharing_gap < model.engine.trail.low(r.start)) continue;
    const Var partner = model.engine.ask();
    any.push_back(yes(partner));
    model.engine.clause({no(partner), yes(r.shared)});
    for (const Literal there : model.present({k})) model.engine.clause({no(partner), there});
    model.minimum(model.moment({k, Edge::end}), r.start, {yes(partner)});
    model.maximum(model.moment({k, Edge::end}, shift(model.problem.sharing_gap)), r.start, {yes(partner)});
  }
  model.engine.clause(any);
}

}  // namespace

void add_lags(ModelVariables& model) {
  for (const MinimumLag& lag : model.problem.minimum_lags) {
    model.minimum(model.moment(lag.from, lag.bound), model.run(lag.to).start, model.present({lag.from.activity, lag.to}));
  }
  std::vector<std::vector<Literal>> missed(at(model.runs()));  // by remedy
  for (const MaximumLag& lag : model.problem.maximum_lags) {
    if (!lag.remedy) {
      model.maximum(model.moment(lag.from, lag.bound), model.run(lag.to).start, model.present({lag.from.activity, lag.to}));
    } else if (model.problem.activities[at(*lag.remedy)].optional) {
      add_remedy(model, lag, missed);
    }
  }
  for (int i = 0; i < model.runs(); ++i) {
    if (!model.problem.activities[at(i)].optional) continue;
    std::vector<Literal>& any = missed[at(i)];
    any.push_back(no(model.run(i).present));
    model.engine.clause(any);
  }
}

void add_partners(ModelVariables& model) {
  for (int i = 0; i < model.runs(); ++i) add_partners_of(model, i);
}

}  // namespace coatday::solver::clause_learning
