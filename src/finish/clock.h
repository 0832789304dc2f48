#pragma once
// When a coat reaches a stage: the clock's rate integrated over the air, row by row, nights included.

#include <list>
#include <optional>
#include <string>
#include <vector>

#include "climate/air.h"
#include "finish/product.h"

namespace coatday::finish {

/// The rates of laws over one air, row by row: what several products share is worked out once.
class Rates {
 public:
  explicit Rates(const climate::AirSeries& air) : air_(&air) {}

  [[nodiscard]] const climate::AirSeries& air() const { return *air_; }
  [[nodiscard]] const std::vector<double>& of(const Law&, const climate::Air& reference, Side);

 private:
  struct Entry {
    Law law;
    climate::Air reference;
    Side side;
    std::vector<double> rates;
  };
  const climate::AirSeries* air_;
  std::list<Entry> entries_;  // references to them stay valid
};

/// The running integral of a rate over an air series. Built once for a law and an air; each question is then a look-up.
class ClockIntegral {
 public:
  /// divide_by_uncertainty: the late side, on which every hour counts for less.
  ClockIntegral(const climate::AirSeries&, const Law&, const climate::Air& reference, Side side, bool divide_by_uncertainty);
  ClockIntegral(Rates&, const Law&, const climate::Air& reference, Side side, bool divide_by_uncertainty);

  /// The clock's hours between two instants of the series. Throws std::out_of_range outside it.
  [[nodiscard]] Hours between(Instant from, Instant until) const;
  /// The first whole second at which `need` has passed since `from`; none when the series ends before. Throws std::out_of_range where
  /// `from` lies before the series.
  [[nodiscard]] std::optional<Instant> reached(Instant from, Hours need) const;

 private:
  [[nodiscard]] double sum_at(Instant) const;

  Instant begin_;
  std::vector<double> sums_;  // hours at the start of each row, and at the end of the last
};

/// A product's clocks over one air. A cure that waits for the drying clock is counted from recoat, its hours less those to recoat.
class CureClock {
 public:
  /// late: each time as long as its uncertainty allows, but for the end of the recoat window, whose safe side is the early one: that is
  /// always the nominal end on the fast side of the laws.
  enum class Estimate { nominal, late };
  CureClock(const Product&, const climate::AirSeries&, Estimate);
  CureClock(const Product&, Rates&, Estimate);

  /// When a coat finished at `applied` reaches the stage; none when the product has no such stage, or the air ends first.
  [[nodiscard]] std::optional<Instant> reached(Stage, Instant applied) const;
  /// When the drying clock shows `need`: waits that a rule adds, such as a longer wait over an oil stain.
  [[nodiscard]] std::optional<Instant> dried(Hours need, Instant applied) const;
  [[nodiscard]] bool has(Stage) const;

 private:
  /// The two clocks on one side. A clock without a law is missing.
  struct Clocks {
    std::optional<ClockIntegral> drying, cure;
  };
  static Clocks clocks(const Product&, Rates&, Side, Estimate);
  [[nodiscard]] std::optional<Instant> cured(const Clocks&, Hours need, Instant applied) const;

  StageHours hours_;
  Clocks waiting_, closing_;  // closing_: of a product whose recoat window closes
  bool cure_starts_at_recoat_ = false;
};

/// May a coat go on from `start` until `end`, in all the air that it meets, and until `limits.hold` after? The words of the first limit
/// that is broken, or nothing. Air that the series does not hold is refused.
[[nodiscard]] std::optional<std::string> refused(const Product&, const climate::AirSeries&, Instant start, Instant end,
                                                 Units = Units::metric);
/// The words of the first row nearer its dew point than `limits.blush_warning`, or nothing.
[[nodiscard]] std::optional<std::string> warned(const Product&, const climate::AirSeries&, Instant start, Instant end,
                                                Units = Units::metric);
/// For each row: may a coat be put on throughout it? The hold counts from the row's end. Where all rows of an application are allowed,
/// refused() has nothing to say.
[[nodiscard]] std::vector<bool> allowed_rows(const Product&, const climate::AirSeries&);

}  // namespace coatday::finish
