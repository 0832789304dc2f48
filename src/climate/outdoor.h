#pragma once
// Outdoor air of one year, which repeats, from a weather file: EPW (epw.h) or an hourly table (year_csv.h), recognised by content.

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "climate/air.h"
#include "climate/weather_year.h"

namespace coatday::climate {

class OutdoorYear final : public AirSource {
 public:
  /// Reads text already in memory, any bytes. `place` is for describe() where the file names none.
  [[nodiscard]] static tl::expected<OutdoorYear, ReadError> parse(std::string_view text, std::string place);

  /// Linear between the middles of the hours; the year repeats; 29 February takes 28 February's air where the file has none.
  [[nodiscard]] Air at(Instant) const override;
  [[nodiscard]] Origin origin(Instant) const override { return Origin::weather; }
  [[nodiscard]] Pascals pressure() const { return year_.pressure; }                 ///< the file's mean, or of its elevation, or standard
  [[nodiscard]] std::span<const std::string> notes() const { return year_.notes; }  ///< what was bridged
  /// In words, where the file's clock is more than 3 h off the zone's standard time: it is from far away, or its hours from UTC are wrong.
  [[nodiscard]] std::optional<std::string> far_clock(const Zone&) const;
  [[nodiscard]] std::string describe(Units) const override;

 private:
  [[nodiscard]] const Air& hour(date::local_time<std::chrono::hours>) const;

  WeatherYear year_;
  std::chrono::seconds utc_offset_{0};
};

}  // namespace coatday::climate
