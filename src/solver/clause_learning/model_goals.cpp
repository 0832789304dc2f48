#include "solver/clause_learning/model_goals.h"

#include <algorithm>
#include <cmath>

#include "solver/clause_learning/lateness.h"

namespace coatday::solver::clause_learning {
namespace {

constexpr double most_units = 1e9;

class Goals {
 public:
  explicit Goals(ModelVariables& model) : model_(model) {}
  Objective run();

 private:
  void add_lateness();
  [[nodiscard]] bool scale_lateness(double scale);

  ModelVariables& model_;
  Objective result_;
};

Objective Goals::run() {
  const std::vector<Goal>& goals = model_.problem.goals;
  if (goals.empty()) return result_;
  if (goals.size() == 1) {
    result_.ready = model_.run(goals.front().activity).start;
  } else {
    Time low = -unreachable, high = -unreachable;
    for (const Goal& goal : goals) {
      const Run& r = model_.run(goal.activity);
      if (r.present < 0) low = std::max(low, model_.engine.trail.low(r.start));
      high = std::max(high, model_.engine.trail.high(r.start));
    }
    result_.ready = model_.engine.add(std::min(low, high), high);
    for (const Goal& goal : goals)
      model_.engine.arcs.minimum(model_.run(goal.activity).start, Mapping(), result_.ready, model_.present({goal.activity}));
  }
  add_lateness();
  return result_;
}

// Whether all weights are whole numbers of units of 1 / scale.
bool Goals::scale_lateness(double scale) {
  result_.lateness_unit = 1 / scale;
  return std::all_of(model_.problem.goals.begin(), model_.problem.goals.end(), [scale](const Goal& goal) {
    const double units = goal.weight * scale;
    return std::abs(units - std::round(units)) <= 1e-9 * std::max(1.0, units);
  });
}

void Goals::add_lateness() {
  double most = 0;
  for (const Goal& goal : model_.problem.goals) {
    if (goal.due < unreachable)
      most += goal.weight * std::max(0.0, static_cast<double>(model_.engine.trail.high(model_.run(goal.activity).start)) - goal.due);
  }
  if (most <= 0) return;
  double scale = 1;
  result_.exact_lateness = scale_lateness(scale);
  while (!result_.exact_lateness && most * scale * 10 <= most_units) result_.exact_lateness = scale_lateness(scale *= 10);
  while (most * scale > most_units) result_.exact_lateness = scale_lateness(scale /= 10);
  std::vector<Promise> promises;
  for (const Goal& goal : model_.problem.goals) {
    const Run& r = model_.run(goal.activity);
    const double units = result_.exact_lateness ? std::round(goal.weight * scale) : std::floor(goal.weight * scale);
    if (goal.due < model_.engine.trail.high(r.start) && units > 0)
      promises.push_back({r.start, goal.due, static_cast<Time>(units), r.present});
  }
  result_.lateness = model_.engine.add(0, static_cast<Time>(most * scale) + 1);
  model_.engine.add(std::make_unique<Lateness>(result_.lateness, std::move(promises)));
}

}  // namespace

Objective add_goals(ModelVariables& model) { return Goals(model).run(); }

}  // namespace coatday::solver::clause_learning
