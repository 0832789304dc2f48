#include "solver/clause_learning/model_resources.h"

#include <algorithm>
#include <map>

#include "solver/clause_learning/cumulative.h"
#include "solver/clause_learning/energetic.h"

namespace coatday::solver::clause_learning {
namespace {

class Resources {
 public:
  explicit Resources(ModelVariables& model) : model_(model) {}
  std::vector<std::vector<Var>> run(ModelOrders&);

 private:
  [[nodiscard]] std::vector<Use> activity_uses();
  void add_cliques(const DisjunctiveSet&);
  void add_energy(const std::vector<Use>&);
  void add_hold(int, std::vector<Use>&);
  [[nodiscard]] bool fits(const Demand&) const;

  ModelVariables& model_;
  std::vector<std::vector<Var>> choices_;  ///< by hold
};

std::vector<std::vector<Var>> Resources::run(ModelOrders& orders) {
  std::vector<Use> uses = activity_uses();
  for (int h = 0; h < static_cast<int>(model_.problem.holds.size()); ++h) add_hold(h, uses);
  if (uses.empty()) return std::move(choices_);
  Time first = unreachable, last = -unreachable;
  std::vector<Engine::Wake> wakes;
  for (int u = 0; u < static_cast<int>(uses.size()); ++u) {
    const Use& use = uses[at(u)];
    first = std::min(first, model_.engine.trail.low(use.begin));
    last = std::max(last, model_.engine.trail.high(use.begin) + 1);
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
  for (const Resource& r : model_.problem.resources) capacities.push_back(r.capacity);
  const DisjunctiveSet disjunctive = find_disjunctive_set(model_.engine.trail, uses, model_.problem.resources);
  const std::vector<Use> all = uses;
  model_.engine.add(std::make_unique<Cumulative>(capacities, std::move(uses), first, last), wakes);
  add_cliques(disjunctive);
  add_energy(all);
  orders.add(disjunctive);
  return std::move(choices_);
}

void Resources::add_cliques(const DisjunctiveSet& disjunctive) {
  for (const std::vector<Task>& tasks : find_cliques(disjunctive)) {
    model_.engine.add(std::make_unique<Disjunctive>(tasks));
  }
}

void Resources::add_energy(const std::vector<Use>& uses) {
  for (int r = 0; r < static_cast<int>(model_.problem.resources.size()); ++r) {
    std::vector<Energetic::Job> jobs;
    for (const Use& use : uses) {
      const auto demand = std::find_if(use.demands.begin(), use.demands.end(), [r](const Demand& d) { return d.resource == r; });
      const auto length = shortest(model_.engine.trail, use);
      if (demand != use.demands.end() && length && *length > 0) jobs.push_back({{use.begin, *length}, demand->amount, use.conditions});
    }
    model_.engine.add(std::make_unique<Energetic>(model_.problem.resources[at(r)].capacity, std::move(jobs)));
  }
}

bool Resources::fits(const Demand& d) const { return d.amount <= model_.problem.resources[at(d.resource)].capacity; }

std::vector<Use> Resources::activity_uses() {
  std::vector<Use> uses;
  for (int i = 0; i < model_.runs(); ++i) {
    std::map<int, int> totals;
    for (const Demand& d : model_.problem.activities[at(i)].demands) totals[d.resource] += d.amount;
    const Moment end = model_.moment({i, Edge::end});
    Use use{model_.run(i).start, {{end.x, model_.mapping(end), -1}}, {}, model_.present({i})};
    for (const auto& [resource, amount] : totals) {
      if (!fits({resource, amount})) {
        std::vector<Literal> absent;
        for (const Literal there : use.conditions) absent.push_back(!there);
        model_.engine.clause(absent);
      } else if (amount > 0) {
        use.demands.push_back({resource, amount});
      }
    }
    if (!use.demands.empty()) uses.push_back(std::move(use));
  }
  return uses;
}

void Resources::add_hold(int index, std::vector<Use>& uses) {
  const Hold& hold = model_.problem.holds[at(index)];
  Use use{model_.run(hold.first).start, {}, {}, model_.present({hold.first})};
  for (const int until : hold.until) use.endings.push_back({model_.run(until).start, Mapping(), model_.run(until).present});
  if (hold.limit) {
    const Moment end = model_.moment(hold.limit_from, hold.limit);
    use.endings.push_back({end.x, model_.mapping(end), model_.run(hold.limit_from.activity).present});
  }
  choices_.emplace_back();
  std::vector<Literal> any;
  for (const Literal there : use.conditions) any.push_back(!there);
  const bool alone = hold.choices.size() == 1 && fits(hold.choices.front());
  for (const Demand& d : hold.choices) {
    Use chosen = use;
    const Var choice = alone ? -1 : model_.engine.ask();
    choices_.back().push_back(choice);
    if (!alone) {
      chosen.conditions.push_back(yes(choice));
      any.push_back(yes(choice));
      for (const Literal there : use.conditions) model_.engine.clause({no(choice), there});
      for (const Var other : choices_.back()) {
        if (other != choice) model_.engine.clause({no(choice), no(other)});
      }
      if (!fits(d)) model_.engine.clause({no(choice)});
    }
    if (d.amount <= 0 || !fits(d)) continue;
    chosen.demands.push_back(d);
    uses.push_back(std::move(chosen));
  }
  if (!alone) model_.engine.clause(any);
}

}  // namespace

std::vector<std::vector<Var>> add_resources(ModelVariables& model, ModelOrders& orders) { return Resources(model).run(orders); }

}  // namespace coatday::solver::clause_learning
