#include "planner/advice/trials.h"

#include <algorithm>

#include "checker/check.h"
#include "planner/make/make_plan.h"

namespace coatday::planner {

/// Whether it has a sound plan that is worth it.
bool Trials::plan(Trial& trial, const Worth& worth, Purpose purpose) {
  const double left = guard_.left();
  cut_off_ = cut_off_ || left <= 0;
  if (cut_off_) return false;
  job::Request request{trial.from};
  request.work = budget_.work;
  request.guard = left;
  trial.plan = make_plan(trial.job, request, purpose);
  cut_off_ = trial.plan.search_cut_off;  // what half a search found is not told: another run would find another date
  if (cut_off_) return false;
  return trial.plan.status == job::Status::planned && worth(trial.plan) && checker::check(trial.plan, trial.job).empty();
}

std::optional<Trial> Trials::run(std::span<const Change* const> changes, const Worth& worth) {
  if (++made_ > budget_.plans) return std::nullopt;
  Trial trial{job_, request_.from, {}, "", {}};
  for (const Change* change : changes) change->make(trial.job, trial.from);
  const auto counts = [](const job::Plan& plan) {
    return [&plan](const Change* change) { return !change->counts || change->counts(plan); };
  };
  const auto worth_it = [&](const job::Plan& plan) { return worth(plan) && std::all_of(changes.begin(), changes.end(), counts(plan)); };
  if (!plan(trial, worth_it, Purpose::compare)) return std::nullopt;
  bool all_keys = true;
  for (const Change* change : changes) {
    trial.text += (trial.text.empty() ? "" : "; and ") + change->text(trial.plan);
    trial.set.insert(trial.set.end(), change->set.begin(), change->set.end());
    all_keys = all_keys && !change->set.empty();
  }
  if (!all_keys) trial.set.clear();
  return trial;
}

std::optional<Trial> Trials::as_set(Trial trial, const Worth& worth) {
  if (request_.reread && !trial.set.empty()) {
    std::optional<job::Job> read = request_.reread(trial.set);
    if (!read) return std::nullopt;
    trial.job = *std::move(read);
  }
  if (!plan(trial, worth, Purpose::follow)) return std::nullopt;
  return trial;
}

}  // namespace coatday::planner
