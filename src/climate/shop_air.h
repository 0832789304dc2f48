#pragma once
// The shop's air from what is known of the shop.

#include <optional>
#include <utility>
#include <vector>

#include "climate/outdoor.h"
#include "climate/room.h"
#include "climate/timetable.h"

namespace coatday::climate {

/// What is known of a room, so that a logger's readings can show more of it.
struct KnownRoom {
  std::optional<OutdoorYear> outdoors;
  Timetable heating;
  Room room;  ///< nothing in it without outdoors
};

/// Always the same.
class ConstantAir final : public AirSource {
 public:
  explicit ConstantAir(Air air) : air_(air) {}
  [[nodiscard]] Air at(Instant) const override { return air_; }
  [[nodiscard]] std::string describe(Units) const override;

 private:
  Air air_;
};

/// A timetable: each rule says the temperature at every hour (heated, and otherwise) and the humidity. Days without a rule take the constant
/// air, where there is one.
class TimetableAir final : public AirSource {
 public:
  TimetableAir(Timetable timetable, Zone zone, std::optional<Air> constant = std::nullopt)
      : timetable_(std::move(timetable)), zone_(std::move(zone)), constant_(constant) {}
  /// Throws std::out_of_range at a time for which neither gives a temperature and a humidity.
  [[nodiscard]] Air at(Instant) const override;
  [[nodiscard]] Origin origin(Instant) const override;
  [[nodiscard]] std::string describe(Units) const override;

 private:
  Timetable timetable_;
  Zone zone_;
  std::optional<Air> constant_;
};

/// Outdoor air let in and warmed at constant humidity ratio, so its relative humidity falls; without heat the shop falls back to outdoors
/// exponentially with the time constant. A heater without a limit holds its set point from the first minute; none ever cools. Above
/// saturation the humidity is capped at 1 (the rest condenses). With a moisture balance the room's own water counts in place of outdoors'.
class HeatedShopAir final : public AirSource {
 public:
  /// Computes the shop's air from `from`, less what it takes to forget the starting value, until `until`, both widened to whole
  /// rows of an AirSeries. Throws std::invalid_argument unless the time constant is > 0, and lift, volume and air changes where given.
  HeatedShopAir(OutdoorYear outdoors, Timetable timetable, const Room& room, Zone zone, Instant from, Instant until);
  /// Throws std::out_of_range outside that span.
  [[nodiscard]] Air at(Instant) const override;
  [[nodiscard]] Origin origin(Instant) const override { return Origin::weather; }
  /// Of whole steps that begin in the span. Heating is 0 for a heater without a limit, of which nothing is known.
  [[nodiscard]] std::optional<RoomWork> work(Instant from, Instant until) const override;
  [[nodiscard]] std::string describe(Units) const override;

  static constexpr Minutes step{10};  ///< outdoor air is held at its middle's value within a step

 private:
  [[nodiscard]] RoomState next(const RoomState& at_step, Instant step_start, Instant t, RoomWork&) const;
  [[nodiscard]] Celsius held(Celsius at_step, Celsius outside, Instant step_start, Instant t) const;

  OutdoorYear outdoors_;
  Timetable timetable_;
  Room room_;
  Zone zone_;
  Instant begin_;
  std::vector<RoomState> states_;  // one each `step`, heater included
  std::vector<RoomWork> works_;    // of the step that begins there
};

}  // namespace coatday::climate
