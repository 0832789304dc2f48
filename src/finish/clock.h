#pragma once
// When a coat reaches a stage: the rate of the clock, summed over the air row by row, nights included.

#include <map>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

#include "climate/air.h"
#include "finish/product.h"

namespace coatday::finish {

/// A law's rate in each row of an air. It is worked out from the first row up to the last one that was asked for.
class RowRates {
 public:
  RowRates(climate::AirSeries air, const Law& law, const climate::Air& reference, Side side)
      : air_(std::move(air)), rate_(law, reference, side) {}

  [[nodiscard]] const climate::AirSeries& air() const { return air_; }
  [[nodiscard]] double operator[](std::size_t row) const;

 private:
  climate::AirSeries air_;
  Rate rate_;
  mutable std::vector<double> known_;
};

/// The running integral of a rate over an air series, kept as far as it has been asked for; each question is then a look-up.
class ClockIntegral {
 public:
  ClockIntegral(const climate::AirSeries&, const Law&, const climate::Air& reference, Side, Estimate);
  ClockIntegral(std::shared_ptr<const RowRates>, Estimate);

  /// The clock's hours between two instants of the series. Throws std::out_of_range outside it.
  [[nodiscard]] Hours between(Instant from, Instant until) const;
  /// The first whole second at which `need` has passed since `from`; none when the series ends before. Throws std::out_of_range where
  /// `from` lies before the series.
  [[nodiscard]] std::optional<Instant> reached(Instant from, Hours need) const;

 private:
  [[nodiscard]] std::size_t rows() const { return rates_->air().rows().size(); }
  [[nodiscard]] double sum_at(Instant) const;
  void know(std::size_t row) const;

  std::shared_ptr<const RowRates> rates_;
  Estimate estimate_;
  Instant begin_;
  mutable std::vector<double> sums_{0};  // hours at the start of each row, and at the end of the last, as far as they are known
  mutable long double sum_ = 0;          // so that months of rows cost no digits
};

/// The integrals of laws over one air: what several stages and products share is worked out once.
class Integrals {
 public:
  using Shared = std::shared_ptr<const ClockIntegral>;
  explicit Integrals(const climate::AirSeries& air) : air_(&air) {}

  [[nodiscard]] const climate::AirSeries& air() const { return *air_; }
  [[nodiscard]] Shared of(const Law&, const climate::Air& reference, Side, Estimate);

 private:
  struct Entry {
    Law law;
    climate::Air reference;
    Side side;
    std::shared_ptr<const RowRates> rates;
    std::map<Estimate, Shared> integrals;
  };
  const climate::AirSeries* air_;
  std::vector<Entry> entries_;
};

/// A product's clocks over one air, on one side of what is known. A cure that waits for the drying clock is counted from recoat, its hours
/// less those to recoat. The end of the recoat window runs on the fast side of the laws, so that it never lies later than they say.
class CureClock {
 public:
  CureClock(const Product&, const climate::AirSeries&, Estimate);
  CureClock(const Product&, Integrals&, Estimate);

  /// When a coat finished at `applied` reaches the stage; none when the product has no such stage, or the air ends first. A film of another
  /// thickness dries so many times as long: see hours_of_film() of finish/film.h.
  [[nodiscard]] std::optional<Instant> reached(Stage, Instant applied, double drying_factor = 1) const;
  /// When the drying clock shows `need`: waits that a rule adds, such as a longer wait over an oil stain.
  [[nodiscard]] std::optional<Instant> dried(Hours need, Instant applied) const;
  [[nodiscard]] bool has(Stage stage) const { return hours_[stage].has_value() && clocks_[stage] != nullptr; }

 private:
  StageHours hours_;
  PerStage<Integrals::Shared> clocks_;  // null without a law
  Integrals::Shared drying_;            // of the clock as a whole
  Integrals::Shared to_recoat_;         // where the cure waits for recoat ...
  Integrals::Shared to_recoat_fast_;    // ... and the same for the window's end
};

}  // namespace coatday::finish
