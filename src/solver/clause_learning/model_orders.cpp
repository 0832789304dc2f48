#include "solver/clause_learning/model_orders.h"

namespace coatday::solver::clause_learning {
namespace {

constexpr std::size_t most_orders = 6000;  // with more, each move of a start costs too much

}  // namespace

void ModelOrders::add(const DisjunctiveSet& disjunctive) {
  std::vector<std::pair<std::size_t, std::size_t>> open;
  const auto may_precede = [&](const Task& one, const Task& other) {
    return model_.engine.trail.low(one.start) + one.length <= model_.engine.trail.high(other.start);
  };
  for (std::size_t a = 0; a < disjunctive.tasks.size(); ++a) {
    for (std::size_t b = a + 1; b < disjunctive.tasks.size() && open.size() <= most_orders; ++b) {
      const Task &one = disjunctive.tasks[a], &other = disjunctive.tasks[b];
      if (disjunctive.disjoint[a][b] == 0 || one.start == other.start || !may_precede(one, other) || !may_precede(other, one)) continue;
      open.emplace_back(a, b);
    }
  }
  if (open.size() > most_orders) return;
  for (const auto& [a, b] : open) add_order(disjunctive, a, b);
}

void ModelOrders::add_order(const DisjunctiveSet& disjunctive, std::size_t a, std::size_t b) {
  const Var one = disjunctive.tasks[a].start, other = disjunctive.tasks[b].start, x = ask_idly();
  model_.engine.arcs.minimum(one, disjunctive.ends[a], other, {yes(x)});
  model_.engine.arcs.minimum(other, disjunctive.ends[b], one, {no(x)});
  order_of_.try_emplace({one, other}, yes(x));
  order_of_.try_emplace({other, one}, no(x));
  orders_.push_back({x, one, other});
}

Var ModelOrders::ask_idly() {
  const Var x = model_.engine.ask();
  idle_.resize(at(x + 1), 0);
  idle_[at(x)] = 1;
  return x;
}

Literal ModelOrders::precedence(int before, int after) {
  if (const auto known = order_of_.find({model_.run(before).start, model_.run(after).start}); known != order_of_.end())
    return known->second;
  const auto [found, is_new] = precedences_.try_emplace({before, after}, -1);
  if (!is_new) return yes(found->second);
  const Var x = found->second = ask_idly();
  Conditions conditions = model_.present({before, after});
  conditions.push_back(yes(x));
  model_.minimum(model_.moment({before, Edge::end}), model_.run(after).start, std::move(conditions));
  return yes(x);
}

}  // namespace coatday::solver::clause_learning
