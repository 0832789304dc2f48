#include "job/fresh_air.h"

#include "job/stages.h"

namespace coatday::job {

namespace {

bool wet_at(const Plan& plan, const Event& coat, Instant t) {
  if (!coat.vapour || coat.start > t) return false;
  const auto& dry = coat.stages.expected[wet_until(plan.products.at(coat.product))];
  return !dry || t < *dry;
}

}  // namespace

std::optional<MostVapour> most_vapour(const Plan& plan) {
  std::optional<MostVapour> most;
  for (const Event& begins : plan.events) {
    if (!begins.vapour) continue;
    MostVapour here{begins.start, {}, {}};
    for (std::size_t i = 0; i < plan.events.size(); ++i) {
      if (!wet_at(plan, plan.events[i], begins.start)) continue;
      here.airflow += plan.events[i].vapour->airflow;
      here.events.push_back(i);
    }
    if (!most || here.airflow > most->airflow) most = std::move(here);
  }
  return most;
}

}  // namespace coatday::job
