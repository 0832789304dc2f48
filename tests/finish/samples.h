#pragma once
// Air and products made up for the tests of this room.

#include <utility>
#include <vector>

#include "finish/clock.h"

namespace coatday::finish::test {

inline constexpr Instant monday{std::chrono::sys_days(std::chrono::days(20464))};  // 11 January 2026, 00:00 UTC

/// Air that is given row by row, each a half hour.
class ListedAir final : public climate::AirSource {
 public:
  explicit ListedAir(std::vector<climate::Air> rows) : rows_(std::move(rows)) {}
  [[nodiscard]] climate::Air at(Instant t) const override {
    return rows_.at(static_cast<std::size_t>((t - monday) / climate::AirSeries::step));
  }
  [[nodiscard]] std::string describe(Units) const override { return "listed"; }

 private:
  std::vector<climate::Air> rows_;
};

inline climate::AirSeries series(const std::vector<climate::Air>& rows) {
  return {ListedAir(rows), monday, monday + climate::AirSeries::step * static_cast<int>(rows.size())};
}

constexpr climate::Air air(double celsius, double percent) { return {Celsius(celsius), RelativeHumidity(percent / 100)}; }

/// Hours of the same air.
inline std::vector<climate::Air> constant(int hours, climate::Air a) {
  return std::vector<climate::Air>(static_cast<std::size_t>(2 * hours), a);
}

inline StageHours all_stages() {
  StageHours hours;
  double h = 1;
  for (auto& stage : hours.values) stage = Hours(h += 0.75);
  return hours;
}

/// A product of that class with every stage and no rule of its own.
inline Product product(Mechanism mechanism) {
  Product p;
  p.id = p.family = "made-up";
  p.mechanism = mechanism;
  p.rows = {{reference_air, all_stages()}};
  return p;
}

}  // namespace coatday::finish::test
