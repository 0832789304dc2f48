#pragma once
// A year of hours gathered from the records of a weather file: averaged where there are several an hour, bridged where a few are missing.

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "climate/air.h"
#include "climate/csv.h"

namespace coatday::climate {

/// One record as it stands in the file. Values that are marked as missing are left out.
struct WeatherRecord {
  std::optional<int> year;
  int month = 1, day = 1;  ///< 1 to 12, 1 to 31
  int hour = 1;            ///< 1 to 24: it names the hour's end
  int minute = 0;          ///< 0 to 60
  std::optional<Celsius> temperature;
  std::optional<RelativeHumidity> humidity;
  std::optional<Pascals> pressure;
  int line = 0;
};

/// Which years the hours of a file are from.
struct YearsTold {
  bool typical = false;  ///< the file says that it is a typical year: its hours are from several
  std::optional<int> first, last;

  /// A word such as TMY, or "typical", in what the file says of itself.
  void read(std::string_view said);
  void add(std::optional<int> year);
  [[nodiscard]] std::string words() const;  ///< "a typical year", "2019", "2001 to 2005"
};

struct WeatherYear {
  YearsTold years;
  std::vector<Air> hours;  ///< of a leap year, 8784, from 1 January
  Hours utc_offset{0};
  Pascals pressure;
  std::string place;               ///< as the file names it, or empty
  std::vector<std::string> notes;  ///< what was bridged
};

/// Index of the hour that starts at `hour` o'clock, in a leap year.
[[nodiscard]] std::size_t hour_of_year(date::month, date::day, int hour);

class WeatherGatherer {
 public:
  /// Gaps of up to so many hours are bridged. Judgement: beyond, the air may have swung with the day unseen.
  static constexpr std::size_t longest_bridge = 6;

  /// The complaint where no year has such a day, or the record is there already.
  [[nodiscard]] std::optional<std::string> add(const WeatherRecord&);
  /// What the file says of itself.
  void read_about(std::string_view said) { years_.read(said); }
  /// All hours, or where the first gap is that is too long. A file without 29 February takes 28 February's air. Place and offset are the
  /// caller's. `altitude` gives the pressure where the file has none; else it is the standard one. `last_line` is the file's.
  [[nodiscard]] tl::expected<WeatherYear, ReadError> finish(std::optional<Metres> altitude, int last_line) const;

 private:
  struct Sum {
    double total = 0;
    int count = 0;
    void add(double value) { total += value, ++count; }
    [[nodiscard]] std::optional<double> mean() const;
  };
  struct Hour {
    Sum temperature, humidity;
    std::uint64_t minutes = 0;  // a bit for each that was given
    int line = 0;
  };
  struct Gap;
  [[nodiscard]] std::vector<std::size_t> calendar() const;
  [[nodiscard]] tl::expected<std::vector<double>, ReadError> bridged(Sum Hour::*, std::string_view what, int last_line,
                                                                     std::vector<std::string>& notes) const;
  [[nodiscard]] std::optional<ReadError> too_warm(const std::vector<double>& temperatures) const;
  [[nodiscard]] ReadError too_long(const Gap&, std::string_view what, const std::vector<std::size_t>& order, int last_line) const;

  YearsTold years_;
  std::vector<Hour> hours_ = std::vector<Hour>(8784);
  Sum pressure_;
};

}  // namespace coatday::climate
