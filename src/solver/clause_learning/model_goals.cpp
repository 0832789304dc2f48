// What is to be made small.

#include <algorithm>
#include <cmath>

#include "solver/clause_learning/lateness.h"
#include "solver/clause_learning/model.h"

namespace coatday::solver::clause_learning {
namespace {

constexpr double most_units = 1e9;

}  // namespace

void Model::add_goals() {
  const std::vector<Goal>& goals = problem_.goals;
  if (goals.empty()) return;
  if (goals.size() == 1) {
    ready_ = run(goals.front().activity).start;
  } else {
    Time low = -unreachable, high = -unreachable;
    for (const Goal& goal : goals) {
      const Run& r = run(goal.activity);
      if (r.present < 0) low = std::max(low, engine.trail.low(r.start));
      high = std::max(high, engine.trail.high(r.start));
    }
    ready_ = engine.add(std::min(low, high), high);
    for (const Goal& goal : goals) engine.arcs.minimum(run(goal.activity).start, Mapping(), ready_, present({goal.activity}));
  }
  add_lateness();
}

// Whether all weights are whole numbers of units of 1 / scale.
bool Model::scale_lateness(double scale) {
  unit_ = 1 / scale;
  return std::all_of(problem_.goals.begin(), problem_.goals.end(), [scale](const Goal& goal) {
    const double units = goal.weight * scale;
    return std::abs(units - std::round(units)) <= 1e-9 * std::max(1.0, units);
  });
}

void Model::add_lateness() {
  double most = 0;
  for (const Goal& goal : problem_.goals) {
    if (goal.due < unreachable)
      most += goal.weight * std::max(0.0, static_cast<double>(engine.trail.high(run(goal.activity).start)) - goal.due);
  }
  if (most <= 0) return;
  double scale = 1;
  exact_lateness_ = scale_lateness(scale);
  while (!exact_lateness_ && most * scale * 10 <= most_units) exact_lateness_ = scale_lateness(scale *= 10);
  while (most * scale > most_units) exact_lateness_ = scale_lateness(scale /= 10);
  std::vector<Promise> promises;
  for (const Goal& goal : problem_.goals) {
    const Run& r = run(goal.activity);
    const double units = exact_lateness_ ? std::round(goal.weight * scale) : std::floor(goal.weight * scale);
    if (goal.due < engine.trail.high(r.start) && units > 0) promises.push_back({r.start, goal.due, static_cast<Time>(units), r.present});
  }
  lateness_ = engine.add(0, static_cast<Time>(most * scale) + 1);
  auto lateness = std::make_unique<Lateness>(lateness_, std::move(promises));
  const auto wakes = lateness->wakes();
  engine.add(std::move(lateness), wakes);
}

}  // namespace coatday::solver::clause_learning
