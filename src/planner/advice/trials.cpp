#include "planner/advice/trials.h"

#include <algorithm>

#include "checker/check.h"
#include "planner/make/make_plan.h"

namespace coatday::planner {

std::optional<Trial> Trials::run(std::span<const Change* const> changes, const Worth& worth) {
  if (++made_ > budget_.plans) return std::nullopt;
  Trial trial{job_, from_, {}, ""};
  for (const Change* change : changes) change->make(trial.job, trial.from);
  job::Request request{trial.from};
  request.work = budget_.work;
  trial.plan = make_plan(trial.job, request, Purpose::compare);
  const auto counts = [&](const Change* change) { return !change->counts || change->counts(trial.plan); };
  if (trial.plan.status != job::Status::planned || !worth(trial.plan) || !std::all_of(changes.begin(), changes.end(), counts))
    return std::nullopt;
  trial.plan = make_plan(trial.job, request, Purpose::follow);
  if (!checker::check(trial.plan, trial.job).empty()) return std::nullopt;
  for (const Change* change : changes) trial.text += (trial.text.empty() ? "" : "; and ") + change->text(trial.plan);
  return trial;
}

}  // namespace coatday::planner
