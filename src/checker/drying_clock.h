#pragma once
// The checker's own clocks: the rate of a law, added up row by row.

#include <list>
#include <map>
#include <optional>
#include <tuple>
#include <vector>

#include "climate/air.h"
#include "finish/law.h"
#include "finish/product.h"

namespace coatday::checker {

enum class Estimate { expected, fast, slow };

/// When coats reach their stages in one air. It keeps the rates of the rows that it went through, nothing else.
class Clocks {
 public:
  explicit Clocks(const climate::AirSeries& air) : air_(air) {}
  Clocks(Clocks&&) = default;
  Clocks(const Clocks&) = delete;
  Clocks& operator=(const Clocks&) = delete;

  /// Returns nothing where the product has no such stage, where no clock leads to it, or where the air ends first. `drying` multiplies the drying
  /// hours: what they gain the cure ends later, what they lose its window closes earlier.
  [[nodiscard]] std::optional<Instant> reached(const finish::Product&, finish::Stage, Instant applied, Estimate, double drying) const;
  /// When the drying clock shows so many hours.
  [[nodiscard]] std::optional<Instant> dried(const finish::Product&, Hours, Instant applied, Estimate) const;

 private:
  /// No stage: the drying clock as a whole.
  using Key = std::tuple<const finish::Product*, std::optional<finish::Stage>, finish::Side>;
  /// One law's rates, row by row, without their uncertainty.
  struct Bare {
    finish::Law law;
    climate::Air reference;
    finish::Side side;
    finish::Rate rate;
    std::vector<double> rates;  ///< not a number: not asked for yet
  };
  [[nodiscard]] Bare* bare(const Key&) const;
  [[nodiscard]] double rate(Bare&, std::size_t row, Estimate) const;
  [[nodiscard]] std::optional<Instant> run(const Key&, Estimate, Instant from, Hours need) const;

  const climate::AirSeries& air_;
  mutable std::list<Bare> bare_;
  mutable std::map<Key, Bare*> laws_;  // null: no law
};

}  // namespace coatday::checker
