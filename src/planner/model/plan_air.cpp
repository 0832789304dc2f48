#include "planner/model/plan_air.h"

#include <algorithm>

#include "climate/psychrometrics.h"
#include "finish/conditions.h"

namespace coatday::planner {

void PlanAir::add_surfaces(const Loads& loads) {
  for (const Load& load : loads.loads) {
    for (const Hours body : load.bodies) {
      if (body > Hours(0)) plan_.surfaces[body];
    }
    for (const finish::Step& step : load.schedule->steps) {
      if (step.product) plan_.surfaces[finish::can_time_constant(*job_.catalogue.product(*step.product))];
    }
  }
}

Instant PlanAir::begin() const {
  Instant begin = plan_.from;
  for (const job::Done& done : job_.order.history) begin = std::min(begin, done.start);
  return begin;
}

void PlanAir::extend_to(Instant until) {
  if (!clocks_.empty() && until <= plan_.air.end()) return;
  const Hours slowest = plan_.surfaces.empty() ? Hours(0) : plan_.surfaces.rbegin()->first;
  const Instant from = begin(), before = later(from, -climate::settling(slowest));
  const climate::AirSeries air(*job_.air(before, until + climate::AirSeries::step), before, until);
  plan_.air = air.since(from);
  const std::vector<Pascals> vapour = climate::vapour_pressures(air);
  for (auto& [time_constant, surface] : plan_.surfaces) surface = climate::Surface(air, vapour, time_constant, from);
  clocks_.push_back(std::make_unique<Clocks>(plan_.air, plan_.surfaces));
}

}  // namespace coatday::planner
