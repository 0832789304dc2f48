#pragma once
// Outdoor air of a typical year from an hourly CSV file: columns month, day, hour (1 to 24, the hour's end, local standard time), t_C, rh_pct,
// and optionally p_hPa; comment lines begin with '#', one of them holding "utc_offset_h N".

#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "climate/air.h"

namespace coatday::climate {

struct CsvError {
  int line = 0;         ///< from 1
  std::string message;  ///< what was found and what was expected; completes "…: error: "
};

class OutdoorYear final : public AirSource {
 public:
  /// Reads text already in memory, any bytes. Every hour of the 365 days must be there once; `place` is for describe().
  [[nodiscard]] static tl::expected<OutdoorYear, CsvError> parse(std::string_view text, std::string place);

  /// Linear between the middles of the hours; the year repeats; 29 February takes 28 February's air.
  [[nodiscard]] Air at(Instant) const override;
  [[nodiscard]] Pascals pressure() const { return pressure_; }  ///< the file's mean, or standard
  [[nodiscard]] std::string describe(Units) const override;

 private:
  [[nodiscard]] const Air& hour(date::local_time<std::chrono::hours>) const;

  std::vector<Air> hours_;  // 8760, from 1 January
  std::chrono::seconds utc_offset_{0};
  Pascals pressure_{101325};
  std::string place_;
};

}  // namespace coatday::climate
