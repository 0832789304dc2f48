#include "plan/make/condensation.h"

#include <fmt/core.h>

#include <algorithm>

namespace coatday::plan {

void write_condensation(Plan& plan) {
  Instant end = plan.from;
  for (const Event& event : plan.events) end = std::max(end, event.end);
  climate::RoomWork work;
  for (const climate::AirRow& row : plan.air.rows())
    if (row.work && row.from >= plan.from && row.from < end) work += *row.work;
  if (work.condensing <= Hours(0)) return;
  plan.findings.push_back({"condensation",
                           Severity::warning,
                           fmt::format("for {} until {} the air is damper than it can hold: about {} of water condense in the shop",
                                       format_span(work.condensing), day_and_time(plan.shop.zone.to_local(end)),
                                       format_volume(Litres(work.condensed.value()), plan.shop.units)),
                           plan.shop.name,
                           {}});
}

}  // namespace coatday::plan
