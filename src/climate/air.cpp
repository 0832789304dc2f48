#include "climate/air.h"

#include <array>
#include <stdexcept>

#include "climate/psychrometrics.h"

namespace coatday::climate {

std::string_view word(Origin origin) {
  constexpr std::array<std::string_view, 7> words{
      "constant", "timetable", "weather file", "logger and next source blended", "logger, temperature only", "logger, bridged", "logger"};
  return words.at(static_cast<std::size_t>(origin));
}

RoomWork& RoomWork::operator+=(const RoomWork& other) {
  heating += other.heating;
  removed += other.removed;
  condensed += other.condensed;
  condensing += other.condensing;
  return *this;
}

AirSeries::AirSeries(const AirSource& source, Instant from, Instant until) {
  const Instant first = row_start(from);
  std::vector<AirRow> rows;
  if (until > first) rows.reserve(static_cast<std::size_t>((until - first) / step) + 1);
  for (Instant t = first; t < until; t += step) {
    const Air air = source.mean(t, t + step);
    rows.push_back({t, air, dew_point(air), source.origin(t + step / 2), source.work(t, t + step)});
  }
  *this = AirSeries(std::move(rows));
}

AirSeries AirSeries::since(Instant from) const {
  if (from >= end()) return {};
  const auto first = index(from);
  return first == 0 ? *this : AirSeries({rows_->begin() + static_cast<std::ptrdiff_t>(first), rows_->end()});
}

std::size_t AirSeries::index(Instant t) const {
  if (t < begin() || t >= end()) throw std::out_of_range("AirSeries: no row at that time");
  return static_cast<std::size_t>((t - begin()) / step);
}

}  // namespace coatday::climate
