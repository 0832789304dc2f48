#pragma once
// What both fits of a room share: uninterrupted spans of readings, the way from one to the next in small steps, and residuals.

#include <functional>
#include <vector>

#include "climate/room_fit.h"

namespace coatday::climate {

/// Rows [first, last) of a fit, no two neighbours far apart.
struct FitSpan {
  std::size_t first = 0, last = 0;
};

/// Spans of rows that count, long enough to show anything (judgement: 2 h and 4 readings).
[[nodiscard]] std::vector<FitSpan> fit_spans(const std::vector<FitRow>&, const std::function<bool(const FitRow&)>& counts);
[[nodiscard]] Hours hours_of(const std::vector<FitRow>&, const std::vector<FitSpan>&);

/// Equal small steps between two readings, with their middles.
struct FitSteps {
  Hours each{0};
  std::vector<Instant> middles;
};
[[nodiscard]] FitSteps fit_steps(Instant from, Instant until);

/// Residuals of one fit, span after span.
class FitResiduals {
 public:
  void next_span() { last_ = 0, has_last_ = false; }
  void add(double measured_less_modelled);

  [[nodiscard]] double squares() const { return squares_; }
  /// Of a reading, at least `least`, and larger by as much as the residuals follow each other: (1 + r) / (1 - r) with their correlation r from
  /// one to the next, the usual correction of a first-order autoregression. `unknowns` were fitted.
  [[nodiscard]] double variance(double least, std::size_t unknowns) const;
  /// RMS, worst and bias.
  void tell(Fitted&) const;

 private:
  std::size_t count_ = 0;
  double sum_ = 0, squares_ = 0, following_ = 0, worst_ = 0, last_ = 0;
  bool has_last_ = false;
};

}  // namespace coatday::climate
