#include "solver/clause_learning/model.h"

#include "solver/base/network.h"
#include "solver/base/score.h"
#include "solver/clause_learning/model_exclusions.h"
#include "solver/clause_learning/model_lags.h"
#include "solver/clause_learning/model_resources.h"

namespace coatday::solver::clause_learning {

Model::Model(const Problem& problem) : variables_(problem, engine), orders_(variables_) {
  add_lags(variables_);
  add_partners(variables_);
  choices_ = add_resources(variables_, orders_);
  add_exclusions(variables_);
  objective_ = add_goals(variables_);
}

Schedule Model::schedule() const {
  const Trail& trail = engine.trail;
  Schedule result;
  for (int i = 0; i < runs(); ++i) {
    const Run& r = run(i);
    Assignment a;
    a.present = r.present < 0 || trail.low(r.present) == 1;
    if (a.present) {
      a.start = trail.low(r.start);
      a.shared = r.shared >= 0 && trail.low(r.shared) == 1;
      a.end = end_of(problem().activities[at(i)], a.start, a.shared);
    }
    result.activities.push_back(a);
  }
  for (std::size_t h = 0; h < problem().holds.size(); ++h) {
    int chosen = -1;
    for (std::size_t c = 0; c < choices_[h].size() && result.activities[at(problem().holds[h].first)].present; ++c) {
      if (chosen < 0 && (choices_[h][c] < 0 || trail.low(choices_[h][c]) == 1)) chosen = static_cast<int>(c);
    }
    result.hold_choice.push_back(chosen);
  }
  return result;
}

void Model::values(const Schedule& schedule, std::vector<Time>& values) const {
  for (int i = 0; i < runs(); ++i) {
    const Run& r = run(i);
    const Assignment& a = schedule.activities[at(i)];
    if (r.present >= 0) values[at(r.present)] = a.present ? 1 : 0;
    if (!a.present) continue;
    values[at(r.start)] = a.start;
    if (r.end >= 0) values[at(r.end)] = a.end;
    if (r.shared >= 0) values[at(r.shared)] = a.shared ? 1 : 0;
  }
  const std::vector<std::vector<Var>>& branches = variables_.branches();
  for (std::size_t f = 0; f < branches.size(); ++f) {
    const int taken = taken_branch(problem().alternatives[f], schedule);
    for (std::size_t w = 0; w < branches[f].size(); ++w) values[at(branches[f][w])] = taken == static_cast<int>(w) ? 1 : 0;
  }
  for (std::size_t h = 0; h < choices_.size(); ++h) {
    for (std::size_t c = 0; c < choices_[h].size(); ++c) {
      if (choices_[h][c] >= 0) values[at(choices_[h][c])] = schedule.hold_choice[h] == static_cast<int>(c) ? 1 : 0;
    }
  }
  for (const Order& order : orders_.all()) {
    const Time one = values[at(order.first)], other = values[at(order.second)];
    values[at(order.x)] = one < other ? 1 : 0;
  }
  if (objective_.ready >= 0) values[at(objective_.ready)] = score(problem(), schedule).ready;
}

}  // namespace coatday::solver::clause_learning
