#pragma once
// The air of a room as a function of time: one small type behind one interface, whatever it comes from.

#include <chrono>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "quantity/quantity.h"
#include "quantity/text.h"
#include "quantity/time.h"

namespace coatday::climate {

struct Air {
  Celsius temperature;
  RelativeHumidity humidity;
};

/// What the air of an hour rests on, from the least to the most certain.
enum class Origin : std::uint8_t {
  constant,         ///< stated once for all
  timetable,        ///< stated by the hour
  weather,          ///< a weather file through the shop
  blend,            ///< on the way between a logger's readings and the next source
  log_temperature,  ///< a logger's temperature, with the moisture of the next source
  log_bridged,      ///< between two readings of a logger that stand far apart
  log,              ///< a logger's readings
};
[[nodiscard]] std::string_view word(Origin);

/// What the equipment of a room, and its damp, do over a span of time.
struct RoomWork {
  Hours heating{0};     ///< the heater's, as hours of its full output
  Kilograms removed;    ///< water, by the dehumidifier
  Kilograms condensed;  ///< water that the air could not hold
  Hours condensing{0};

  RoomWork& operator+=(const RoomWork&);
};

/// Temperature and humidity at any instant.
class AirSource {
 public:
  virtual ~AirSource() = default;
  [[nodiscard]] virtual Air at(Instant) const = 0;
  /// The mean over a span of time that is not empty; where a source does not say otherwise, the air at its middle.
  [[nodiscard]] virtual Air mean(Instant from, Instant until) const { return at(from + (until - from) / 2); }
  [[nodiscard]] virtual Origin origin(Instant) const { return Origin::constant; }
  /// None where the source does not come from what the room does.
  [[nodiscard]] virtual std::optional<RoomWork> work(Instant /*from*/, Instant /*until*/) const { return std::nullopt; }
  /// One line for the report: "20 °C in the heated hours, otherwise off; outdoor air of a typical year".
  [[nodiscard]] virtual std::string describe(Units) const = 0;
};

/// Air that holds from an instant until the next row.
struct AirRow {
  Instant from;
  Air air;
  Celsius dew_point;
  Origin origin = Origin::constant;
};

/// The air as the whole program sees it: rows of equal length, constant within a row, so that every integral over it is exact and
/// anyone can repeat it from the printed plan. Copies share the rows, which never change.
class AirSeries {
 public:
  static constexpr Minutes step{30};

  AirSeries() = default;
  /// Rows from `from` (floored to the step) until `until` (rounded up to it), none where that is no time at all. Each takes the source's
  /// mean over it, whose humidity must be > 0, and the origin of its middle. Throws what the source throws.
  AirSeries(const AirSource& source, Instant from, Instant until);
  /// Rows that are already known, each `step` after the one before.
  explicit AirSeries(std::vector<AirRow> rows) : known_(std::make_shared<const Known>(Known{std::move(rows), {}})) {}

  /// The rows from the one that holds `from`, which must not lie before the series. They are shared, too.
  [[nodiscard]] AirSeries since(Instant from) const;

  /// Start of the row that holds `t`: rows begin on the hour and half hour of UTC.
  [[nodiscard]] static Instant row_start(Instant t) { return std::chrono::floor<std::chrono::duration<std::int64_t, std::ratio<1800>>>(t); }

  [[nodiscard]] std::span<const AirRow> rows() const {
    return known_ ? std::span(known_->rows).subspan(first_) : std::span<const AirRow>();
  }
  /// What the room did in that row; none where the source does not come from that.
  [[nodiscard]] std::optional<RoomWork> work(std::size_t row) const;
  [[nodiscard]] Instant begin() const { return rows().empty() ? Instant{} : rows().front().from; }
  [[nodiscard]] Instant end() const { return rows().empty() ? Instant{} : rows().back().from + step; }
  /// Index of the row that holds `t`; throws std::out_of_range outside the series.
  [[nodiscard]] std::size_t index(Instant t) const;
  [[nodiscard]] const AirRow& at(Instant t) const { return rows()[index(t)]; }

 private:
  struct Known {
    std::vector<AirRow> rows;
    std::vector<std::optional<RoomWork>> works;  // by row; empty: none is known
  };
  std::shared_ptr<const Known> known_;  // null: none
  std::size_t first_ = 0;               // of these rows among the known
};

}  // namespace coatday::climate
