#include "planner/advice/another_product.h"

#include <algorithm>
#include <map>
#include <set>

#include <fmt/format.h>

#include "planner/tasks/validate.h"

namespace coatday::planner {

namespace {

constexpr std::size_t most_others = 4;  // of each product

using Counts = std::map<std::pair<std::string, std::string>, std::size_t>;

/// Errors and warnings, by what they are and what they are about.
Counts mistakes(const job::Job& job) {
  Counts counts;
  for (const job::Finding& finding : validate(job)) {
    if (finding.severity != job::Severity::note) ++counts[{finding.code, finding.subject}];
  }
  return counts;
}

bool worse(const Counts& now, const Counts& before) {
  return std::any_of(now.begin(), now.end(), [&](const auto& one) {
    const auto was = before.find(one.first);
    return was == before.end() || was->second < one.second;
  });
}

std::set<std::string> products_in_use(const job::Job& job, const std::set<std::string>& schedules) {
  std::set<std::string> used;
  for (const std::string& id : schedules) {
    const finish::Schedule* schedule = job.catalogue.schedule(id);
    if (schedule == nullptr) continue;
    for (const finish::Step& step : schedule->steps) {
      if (step.product && job.catalogue.product(*step.product) != nullptr) used.insert(*step.product);
    }
  }
  return used;
}

/// In reference air until the next coat, or until dry to pack where there is no next coat.
std::optional<Hours> drying_time(const finish::Product& product) {
  const finish::StageHours& hours = product.reference().hours;
  return hours[finish::Stage::recoat] ? hours[finish::Stage::recoat] : hours[finish::Stage::pack];
}

/// What thins the one does not thin the other, where it has another base.
void put_on(finish::Step& step, const finish::Product& product, const finish::Product& other) {
  step.product = other.id;
  if (step.method && !other.work_rates.contains(*step.method)) step.method.reset();
  if (other.base != product.base) step.thinner_share = 0;
}

void replace(job::Job& job, const std::set<std::string>& schedules, const std::string& id, const std::string& other) {
  const finish::Catalogue& known = job.catalogue;
  for (const std::string& name : schedules) {
    const auto schedule = job.catalogue.schedules.find(name);
    if (schedule == job.catalogue.schedules.end()) continue;
    for (finish::Step& step : schedule->second.steps) {
      if (step.product == id) put_on(step, *known.product(id), *known.product(other));
    }
  }
}

/// Whether some schedule puts it on this.
bool goes_on(const job::Job& job, const std::string& product, finish::Suits suits) {
  return std::any_of(job.catalogue.schedules.begin(), job.catalogue.schedules.end(), [&](const auto& known) {
    const std::vector<finish::Step>& steps = known.second.steps;
    return known.second.suits == suits &&
           std::any_of(steps.begin(), steps.end(), [&](const auto& step) { return step.product == product; });
  });
}

/// It goes on all that the other goes on in these schedules; no record says more of what a product is for.
bool suits_as_well(const job::Job& job, const std::set<std::string>& schedules, const std::string& other, const std::string& product) {
  return std::all_of(schedules.begin(), schedules.end(), [&](const std::string& id) {
    const finish::Schedule* schedule = job.catalogue.schedule(id);
    if (schedule == nullptr) return true;
    const bool used =
        std::any_of(schedule->steps.begin(), schedule->steps.end(), [&](const auto& step) { return step.product == product; });
    return !used || goes_on(job, other, schedule->suits);
  });
}

bool could_stand_for(const finish::Product& other, const finish::Product& product) {
  if (other.id == product.id || other.role != product.role || other.film != product.film) return false;
  const auto time = drying_time(product), faster = drying_time(other);
  return time && faster && *faster < *time;
}

/// That could stand for it, the fastest last.
std::vector<const finish::Product*> others(const job::Job& job, const std::set<std::string>& schedules, const finish::Product& product) {
  std::vector<const finish::Product*> result;
  for (const auto& [id, other] : job.catalogue.products) {
    if (could_stand_for(other, product) && suits_as_well(job, schedules, id, product.id)) result.push_back(&other);
  }
  std::stable_sort(result.begin(), result.end(), [](const auto* a, const auto* b) { return *drying_time(*a) > *drying_time(*b); });
  return result;
}

/// With what it can do to people that the other cannot.
std::string text(const finish::Product& other, const finish::Product& product) {
  std::vector<std::string_view> hazards;
  for (const finish::Hazard hazard : other.hazards) {
    if (std::find(product.hazards.begin(), product.hazards.end(), hazard) == product.hazards.end()) hazards.push_back(finish::word(hazard));
  }
  return fmt::format("{} in place of {}, as many coats; try it on a board first{}{}", other.name, product.name,
                     hazards.empty() ? "" : "; read its label for new hazards: ", fmt::join(hazards, ", "));
}

}  // namespace

std::vector<ChangeSizes> another_product(const job::Job& job) {
  std::set<std::string> schedules;
  for (const job::OrderPiece& piece : job.order.pieces) {
    for (const piece::Part& part : piece.piece.parts) schedules.insert(part.schedule);
  }
  const Counts before = mistakes(job);
  std::vector<ChangeSizes> kinds;
  for (const std::string& id : products_in_use(job, schedules)) {
    const finish::Product& product = *job.catalogue.product(id);
    ChangeSizes sizes;
    for (const finish::Product* one : others(job, schedules, product)) {
      const finish::Product& other = *one;
      const auto make = [schedules, id, other_id = other.id](job::Job& changed, Instant&) { replace(changed, schedules, id, other_id); };
      job::Job changed = job;
      Instant from{};
      make(changed, from);
      if (worse(mistakes(changed), before)) continue;
      sizes.push_back(change(make, text(other, product)));
    }
    if (sizes.size() > most_others) sizes.erase(sizes.begin(), sizes.end() - most_others);
    if (!sizes.empty()) kinds.push_back(std::move(sizes));
  }
  return kinds;
}

}  // namespace coatday::planner
