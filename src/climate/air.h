#pragma once
// The air of a room as a function of time: one small type behind one interface, whatever it comes from.

#include <memory>
#include <span>
#include <string>
#include <vector>

#include "quantity/quantity.h"
#include "quantity/time.h"

namespace coatday::climate {

struct Air {
  Celsius temperature;
  RelativeHumidity humidity;
};

/// Temperature and humidity at any instant.
class AirSource {
 public:
  virtual ~AirSource() = default;
  [[nodiscard]] virtual Air at(Instant) const = 0;
  /// One line for the report: "20 °C by day, off at night; outdoor air of a typical year".
  [[nodiscard]] virtual std::string describe() const = 0;
};

/// Air that holds from an instant until the next row.
struct AirRow {
  Instant from;
  Air air;
  Celsius dew_point;
};

/// The air as the whole program sees it: rows of equal length, constant within a row, so that every integral over it is exact and
/// anyone can repeat it from the printed plan.
class AirSeries {
 public:
  static constexpr Minutes step{30};

  AirSeries() = default;
  /// Rows from `from` (floored to the step) until `until`; each takes the source's air at its middle.
  AirSeries(const AirSource& source, Instant from, Instant until);

  [[nodiscard]] std::span<const AirRow> rows() const { return rows_; }
  [[nodiscard]] Instant begin() const;
  [[nodiscard]] Instant end() const;
  /// Index of the row that holds `t`; throws std::out_of_range outside the series.
  [[nodiscard]] std::size_t index(Instant t) const;
  [[nodiscard]] const AirRow& at(Instant t) const { return rows_[index(t)]; }

 private:
  std::vector<AirRow> rows_;
};

}  // namespace coatday::climate
