#pragma once
// When a coat reaches a stage: the clock's rate integrated over the air, row by row, nights included.

#include <optional>
#include <vector>

#include "climate/air.h"
#include "finish/product.h"

namespace coatday::finish {

/// The running integral of a rate over an air series. Built once for a law and an air; each question is then a look-up.
class ClockIntegral {
 public:
  /// divide_by_uncertainty: the late side, on which every hour counts for less.
  ClockIntegral(const climate::AirSeries&, const Law&, const climate::Air& reference, Side side, bool divide_by_uncertainty);

  /// The clock's hours between two instants of the series.
  [[nodiscard]] Hours between(Instant from, Instant until) const;
  /// The first whole second at which `need` has passed since `from`; none when the series ends before.
  [[nodiscard]] std::optional<Instant> reached(Instant from, Hours need) const;

 private:
  Instant begin_;
  std::vector<double> sums_;   // hours at the start of each row
};

/// A product's clocks over one air.
class CureClock {
 public:
  enum class Estimate { nominal, late };
  CureClock(const Product&, const climate::AirSeries&, Estimate);

  /// When a coat finished at `applied` reaches the stage; none when the product has no such stage, or the air ends first.
  [[nodiscard]] std::optional<Instant> reached(Stage, Instant applied) const;
  /// When the drying clock shows `need`: waits that a rule adds, such as a longer wait over an oil stain.
  [[nodiscard]] std::optional<Instant> dried(Hours need, Instant applied) const;
  [[nodiscard]] bool has(Stage) const;

 private:
  StageHours hours_;
  std::optional<ClockIntegral> drying_, cure_, closing_;
  bool cure_starts_at_recoat_ = false;
};

/// May a coat go on in this row's air, and until `limits.hold` after? The words of the first limit that is broken, or nothing.
[[nodiscard]] std::optional<std::string> refused(const Product&, const climate::AirSeries&, Instant start, Instant end);

}  // namespace coatday::finish
