#pragma once
// The air of the room where a piece will live.

#include <array>

#include "climate/outdoor.h"

namespace coatday::climate {

/// Set points by the month, stated by whoever lives there.
class MonthlyAir final : public AirSource {
 public:
  /// January first.
  MonthlyAir(std::array<Air, 12> months, Zone zone) : months_(months), zone_(std::move(zone)) {}
  [[nodiscard]] Air at(Instant) const override;
  [[nodiscard]] Origin origin(Instant) const override { return Origin::timetable; }
  [[nodiscard]] std::string describe(Units) const override;  ///< "November to April 20 °C, 35 % RH; May to October ..."

 private:
  std::array<Air, 12> months_;
  Zone zone_;
};

/// How a house keeps its rooms. A value that is not given follows the weather.
struct HouseControl {
  Celsius heated;                         ///< never colder
  std::optional<Celsius> cooled;          ///< never warmer
  std::optional<RelativeHumidity> least;  ///< by a humidifier: never drier
  std::optional<RelativeHumidity> most;   ///< by a dehumidifier or the cooling: never damper
};

/// Outdoor air that enters at constant humidity ratio, then is warmed or cooled to what the house keeps. Water from people and cooking is
/// left out, so in winter the room comes out somewhat too dry. Walls that even out a day are left out too: a board does that itself.
class HouseAir final : public AirSource {
 public:
  HouseAir(OutdoorYear outdoors, const HouseControl& control) : outdoors_(std::move(outdoors)), control_(control) {}
  [[nodiscard]] Air at(Instant) const override;
  [[nodiscard]] Origin origin(Instant) const override { return Origin::weather; }
  [[nodiscard]] std::string describe(Units) const override;

 private:
  OutdoorYear outdoors_;
  HouseControl control_;
};

}  // namespace coatday::climate
