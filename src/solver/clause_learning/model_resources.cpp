// Demands of activities, and holds.

#include <algorithm>

#include "solver/clause_learning/model.h"

namespace coatday::solver::clause_learning {

void Model::add_resources() {
  std::vector<Use> uses = activity_uses();
  for (int h = 0; h < static_cast<int>(problem_.holds.size()); ++h) add_hold(h, uses);
  if (uses.empty()) return;
  Time first = unreachable, last = -unreachable;
  std::vector<Engine::Wake> wakes;
  for (int u = 0; u < static_cast<int>(uses.size()); ++u) {
    const Use& use = uses[at(u)];
    first = std::min(first, engine.trail.low(use.begin));
    last = std::max(last, engine.trail.high(use.begin) + 1);
    std::vector<BoundVar> bound_vars{2 * use.begin, 2 * use.begin + 1};
    for (const Literal condition : use.conditions) bound_vars.insert(bound_vars.end(), {condition.bound_var, condition.bound_var ^ 1});
    for (const Ending& e : use.endings) {
      bound_vars.insert(bound_vars.end(), {2 * e.x, 2 * e.x + 1});
      if (e.absent >= 0) bound_vars.insert(bound_vars.end(), {2 * e.absent, 2 * e.absent + 1});
    }
    std::sort(bound_vars.begin(), bound_vars.end());
    bound_vars.erase(std::unique(bound_vars.begin(), bound_vars.end()), bound_vars.end());
    for (const BoundVar bound_var : bound_vars) wakes.push_back({bound_var, u});
  }
  std::vector<int> capacities;
  for (const Resource& r : problem_.resources) capacities.push_back(r.capacity);
  const DisjunctiveSet disjunctive = find_disjunctive_set(engine.trail, uses, problem_.resources);
  const std::vector<Use> all = uses;
  engine.add(std::make_unique<Cumulative>(capacities, std::move(uses), first, last), wakes);
  add_cliques(disjunctive);
  add_energy(all);
  add_orders(disjunctive);
}

void Model::add_cliques(const DisjunctiveSet& disjunctive) {
  for (const std::vector<Task>& tasks : find_cliques(disjunctive)) {
    auto propagator = std::make_unique<Disjunctive>(tasks);
    const auto wakes = propagator->wakes();
    engine.add(std::move(propagator), wakes);
  }
}

void Model::add_energy(const std::vector<Use>& uses) {
  for (int r = 0; r < static_cast<int>(problem_.resources.size()); ++r) {
    std::vector<Energetic::Job> jobs;
    for (const Use& use : uses) {
      const auto demand = std::find_if(use.demands.begin(), use.demands.end(), [r](const Demand& d) { return d.resource == r; });
      const auto length = shortest(engine.trail, use);
      if (demand != use.demands.end() && length && *length > 0) jobs.push_back({{use.begin, *length}, demand->amount, use.conditions});
    }
    auto energetic = std::make_unique<Energetic>(problem_.resources[at(r)].capacity, std::move(jobs));
    const auto wakes = energetic->wakes();
    engine.add(std::move(energetic), wakes);
  }
}

bool Model::fits(const Demand& d) const { return d.amount <= problem_.resources[at(d.resource)].capacity; }

std::vector<Use> Model::activity_uses() {
  std::vector<Use> uses;
  for (int i = 0; i < runs(); ++i) {
    std::map<int, int> totals;
    for (const Demand& d : problem_.activities[at(i)].demands) totals[d.resource] += d.amount;
    const Moment end = moment({i, Edge::end});
    Use use{run(i).start, {{end.x, mapping(end), -1}}, {}, present({i})};
    for (const auto& [resource, amount] : totals) {
      if (!fits({resource, amount})) {
        std::vector<Literal> absent;
        for (const Literal there : use.conditions) absent.push_back(!there);
        engine.clause(absent);
      } else if (amount > 0) {
        use.demands.push_back({resource, amount});
      }
    }
    if (!use.demands.empty()) uses.push_back(std::move(use));
  }
  return uses;
}

void Model::add_hold(int index, std::vector<Use>& uses) {
  const Hold& hold = problem_.holds[at(index)];
  Use use{run(hold.first).start, {}, {}, present({hold.first})};
  for (const int until : hold.until) use.endings.push_back({run(until).start, Mapping(), run(until).present});
  if (hold.limit) {
    const Moment end = moment(hold.limit_from, hold.limit);
    use.endings.push_back({end.x, mapping(end), run(hold.limit_from.activity).present});
  }
  choices_.emplace_back();
  std::vector<Literal> any;
  for (const Literal there : use.conditions) any.push_back(!there);
  const bool alone = hold.choices.size() == 1 && fits(hold.choices.front());
  for (const Demand& d : hold.choices) {
    Use chosen = use;
    const Var choice = alone ? -1 : engine.ask();
    choices_.back().push_back(choice);
    if (!alone) {
      chosen.conditions.push_back(yes(choice));
      any.push_back(yes(choice));
      for (const Literal there : use.conditions) engine.clause({no(choice), there});
      for (const Var other : choices_.back()) {
        if (other != choice) engine.clause({no(choice), no(other)});
      }
      if (!fits(d)) engine.clause({no(choice)});
    }
    if (d.amount <= 0 || !fits(d)) continue;
    chosen.demands.push_back(d);
    uses.push_back(std::move(chosen));
  }
  if (!alone) engine.clause(any);
}

}  // namespace coatday::solver::clause_learning
