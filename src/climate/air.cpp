#include "climate/air.h"

#include <stdexcept>

#include "climate/psychrometrics.h"

namespace coatday::climate {

AirSeries::AirSeries(const AirSource& source, Instant from, Instant until) {
  const Instant first = row_start(from);
  if (until > first) rows_.reserve(static_cast<std::size_t>((until - first) / step) + 1);
  for (Instant t = first; t < until; t += step) {
    const Air air = source.at(t + step / 2);
    rows_.push_back({t, air, dew_point(air)});
  }
}

std::size_t AirSeries::index(Instant t) const {
  if (t < begin() || t >= end()) throw std::out_of_range("AirSeries: no row at that time");
  return static_cast<std::size_t>((t - begin()) / step);
}

}  // namespace coatday::climate
