#pragma once
// The checker's own clocks: the rate of a law, added up row by row.

#include <map>
#include <optional>
#include <tuple>
#include <vector>

#include "climate/air.h"
#include "finish/product.h"

namespace coatday::plan::checking {

enum class Estimate { nominal, late, early };

/// When coats reach their stages in one air. Remembers each row's rate, nothing else.
class Clocks {
 public:
  explicit Clocks(const climate::AirSeries& air) : air_(air) {}

  /// None when the product has no such stage, when no clock leads to it, or when the air ends first. The drying hours are multiplied: the cure
  /// ends later by what they gain, its window earlier by what they lose.
  [[nodiscard]] std::optional<Instant> reached(const finish::Product&, finish::Stage, Instant applied, Estimate, double drying) const;
  /// When the drying clock shows so many hours.
  [[nodiscard]] std::optional<Instant> dried(const finish::Product&, Hours, Instant applied, Estimate) const;

 private:
  /// No stage: the drying clock as a whole.
  using Key = std::tuple<const finish::Product*, std::optional<finish::Stage>, finish::Side, Estimate>;
  [[nodiscard]] const std::vector<double>* rates(const Key&) const;
  [[nodiscard]] std::optional<Instant> run(const Key&, Instant from, Hours need) const;

  /// One law's rates, row by row, before what is unsure of them.
  struct Bare {
    finish::Law law;
    climate::Air reference;
    finish::Side side;
    std::vector<double> rates;
  };
  [[nodiscard]] const std::vector<double>& bare(const finish::Law&, const climate::Air& reference, finish::Side) const;

  const climate::AirSeries& air_;
  mutable std::vector<Bare> bare_;
  mutable std::map<Key, std::vector<double>> rates_;
};

}  // namespace coatday::plan::checking
