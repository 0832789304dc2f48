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
  Known known;
  if (until > first) known.rows.reserve(static_cast<std::size_t>((until - first) / step) + 1);
  for (Instant t = first; t < until; t += step) {
    const Air air = source.mean(t, t + step);
    known.rows.push_back({t, air, dew_point(air), source.origin(t + step / 2)});
    const std::optional<RoomWork> work = source.work(t, t + step);
    if (!work && known.works.empty()) continue;
    known.works.resize(known.rows.size());
    known.works.back() = work;
  }
  known_ = std::make_shared<const Known>(std::move(known));
}

AirSeries AirSeries::since(Instant from) const {
  if (from >= end()) return {};
  AirSeries later = *this;
  later.first_ += index(from);
  return later;
}

std::optional<RoomWork> AirSeries::work(std::size_t row) const {
  const std::size_t among = first_ + row;
  return known_ && among < known_->works.size() ? known_->works[among] : std::nullopt;
}

std::size_t AirSeries::index(Instant t) const {
  if (t < begin() || t >= end()) throw std::out_of_range("AirSeries: no row at that time");
  return static_cast<std::size_t>((t - begin()) / step);
}

}  // namespace coatday::climate
