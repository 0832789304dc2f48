#include "wood/moisture.h"

namespace coatday::wood {

MoistureContent equilibrium_moisture(const climate::Air& air) {
  const double t = air.temperature.value(), h = air.humidity.value();
  const double w = 349 + t * (1.29 + t * 0.0135);
  const double k = 0.805 + t * (0.000736 - t * 0.00000273);
  const double k1 = 6.27 - t * (0.00938 + t * 0.000303);
  const double k2 = 1.91 + t * (0.0407 - t * 0.000293);
  const double kh = k * h, hydrated = k1 * kh, twice = k1 * k2 * kh * kh;
  return MoistureContent(18 / w * (kh / (1 - kh) + (hydrated + 2 * twice) / (1 + hydrated + twice)));
}

bool in_moisture_table(const climate::Air& air) {
  const Celsius coldest(-1.12);  // 30 °F, but for rounding
  return air.temperature >= coldest && air.humidity >= RelativeHumidity(0.05) && air.humidity <= RelativeHumidity(0.95);
}

Metres size_after(Metres initial, double coefficient, MoistureContent from, MoistureContent to) {
  return initial * (1 + coefficient * 100 * (to - from).value());
}

}  // namespace coatday::wood
