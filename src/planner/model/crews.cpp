#include "planner/model/crews.h"

namespace coatday::planner {

namespace {

/// What keeps dust off knows the activities by their numbers.
void swap_spans(solver::Problem& problem, int one, int other) {
  for (solver::Exclusion& exclusion : problem.exclusions) {
    for (std::vector<solver::Span>* side : {&exclusion.left, &exclusion.right}) {
      for (solver::Span& span : *side) {
        if (span.activity == one || span.activity == other) span.activity = one + other - span.activity;
      }
    }
  }
}

}  // namespace

Task by_crew(Task task) {
  std::swap(task.people, task.crew->people);
  std::swap(task.hands_on, task.crew->hands_on);
  std::swap(task.may_pause, task.crew->may_pause);
  return task;
}

void fix_crews(TaskGraph& graph, Model& model, solver::Schedule& schedule) {
  for (const auto& [t, a] : model.by_crew) {
    const auto crew = static_cast<std::size_t>(a);
    if (!schedule.activities[crew].present) continue;
    graph.tasks[t] = by_crew(graph.tasks[t]);
    std::swap(model.problem.activities[t], model.problem.activities[crew]);
    std::swap(schedule.activities[t], schedule.activities[crew]);
    swap_spans(model.problem, static_cast<int>(t), a);
  }
}

}  // namespace coatday::planner
