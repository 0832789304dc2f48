#include "climate/fit_span.h"

#include <algorithm>
#include <cmath>

namespace coatday::climate {

std::vector<FitSpan> fit_spans(const std::vector<FitRow>& rows, const std::function<bool(const FitRow&)>& counts) {
  constexpr Hours shortest{2};
  constexpr std::size_t fewest = 4;
  std::vector<FitSpan> spans;
  for (std::size_t i = 0; i < rows.size();) {
    if (!counts(rows[i])) {
      ++i;
      continue;
    }
    std::size_t end = i + 1;
    while (end < rows.size() && counts(rows[end]) && rows[end].measured.time - rows[end - 1].measured.time <= longest_log_bridge) ++end;
    if (end - i >= fewest && rows[end - 1].measured.time - rows[i].measured.time >= shortest) spans.push_back({i, end});
    i = end;
  }
  return spans;
}

Hours hours_of(const std::vector<FitRow>& rows, const std::vector<FitSpan>& spans) {
  Hours sum{0};
  for (const FitSpan& span : spans) sum += rows[span.last - 1].measured.time - rows[span.first].measured.time;
  return sum;
}

FitSteps fit_steps(Instant from, Instant until) {
  const auto parts = std::max<std::int64_t>(1, (until - from + HeatedShopAir::step - std::chrono::seconds(1)) / HeatedShopAir::step);
  FitSteps steps{Hours(until - from) / static_cast<double>(parts), {}};
  for (std::int64_t k = 0; k < parts; ++k) steps.middles.push_back(later(from, steps.each * (static_cast<double>(k) + 0.5)));
  return steps;
}

void FitResiduals::add(double residual) {
  ++count_;
  sum_ += residual;
  squares_ += residual * residual;
  if (has_last_) following_ += residual * last_;
  worst_ = std::max(worst_, std::abs(residual));
  last_ = residual, has_last_ = true;
}

double FitResiduals::variance(double least, std::size_t unknowns) const {
  constexpr double most_following = 0.99;
  const double following = squares_ > 0 ? std::clamp(following_ / squares_, 0.0, most_following) : 0;
  const double free = std::max<double>(1, static_cast<double>(count_) - static_cast<double>(unknowns));
  return std::max(squares_ / free, least) * (1 + following) / (1 - following);
}

void FitResiduals::tell(Fitted& fitted) const {
  fitted.readings = count_;
  fitted.rms = std::sqrt(squares_ / static_cast<double>(count_));
  fitted.bias = sum_ / static_cast<double>(count_);
  fitted.worst = worst_;
}

}  // namespace coatday::climate
