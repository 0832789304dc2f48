#include "planner/tasks/vapour.h"

#include <algorithm>
#include <cmath>

#include "finish/vapour.h"
#include "job/time_step.h"

namespace coatday::planner {

std::optional<job::Vapour> vapour_of(const finish::Product& product, Litres from_can, double thinner_share, const shop::Ventilation& shop) {
  const Litres solvent = finish::solvent_in(product, from_can, thinner_share);
  if (solvent <= Litres(0)) return std::nullopt;
  const finish::Solvent& as = finish::solvent_of(product);
  return job::Vapour{solvent, solvent * as.density, solvent * finish::dilution_air(as, shop.limit), {}, {}};
}

Effort vented_effort(std::optional<job::Vapour>& vapour, const finish::Product& product, finish::Method method, SquareMetres area,
                     int items, const shop::Shop& shop, const Mixing& mixing) {
  const Effort by_hand = coat_effort(product, method, area, items, shop, mixing);
  if (!vapour) return by_hand;
  const auto& airflow = shop.ventilation.airflow;
  const Hours least(airflow ? vapour->air.value() / airflow->value() : 0);
  const Effort vented = coat_effort(product, method, area, items, shop, mixing, least);
  vapour->airflow = airflow_within(*vapour, Hours(vented.hands_on) - product.stand.value_or(Hours(0)));
  vapour->pauses = vented.hands_on - by_hand.hands_on;
  return vented;
}

CubicMetresPerHour airflow_within(const job::Vapour& vapour, Hours time) {
  return CubicMetresPerHour(vapour.air.value() / std::max(time, Hours(job::time_step)).count());
}

int parts_of_airflow(const job::Vapour& vapour, CubicMetresPerHour shop) {
  constexpr double rounding = 1e-6;
  const double share = std::min(1.0, vapour.airflow / shop);
  return static_cast<int>(std::ceil(share * airflow_parts - rounding));
}

}  // namespace coatday::planner
