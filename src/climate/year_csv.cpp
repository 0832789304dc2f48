#include "climate/year_csv.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <utility>

#include "climate/column_name.h"

namespace coatday::climate {
namespace {

constexpr std::string_view expected_header = "month,day,hour,t_C,rh_pct,p_hPa";
constexpr std::string_view offset_word = "utc_offset_h";
constexpr std::string_view elevation_word = "elev_m";

struct Allowed {
  double low, high;
  std::string_view expected;
};
constexpr Allowed temperature_range{-90, 60, "a temperature from -90 to 60 °C, or nothing where it is missing"};
constexpr Allowed humidity_range{0.01, 100, "a relative humidity above 0, up to 100 %, or nothing where it is missing"};
constexpr Allowed pressure_range{40000, 110000, "a pressure from 400 to 1100 hPa"};
constexpr Allowed offset_range{-14, 14, "hours from UTC, -14 to 14"};
constexpr Allowed elevation_range{-500, 6000, "metres above the sea, -500 to 6000"};

struct Column {
  std::size_t at = 0;
  std::string name;
};

class YearReader {
 public:
  explicit YearReader(std::string_view text) : text_(text) {}

  tl::expected<WeatherYear, ReadError> read() {
    CsvReader rows(text_, separator());
    const CsvRow* row = nullptr;
    while (!error_ && (row = rows.next()) != nullptr) read_row(*row);
    if (!error_ && rows.open_quote()) {
      fail(*rows.open_quote(), "a quote that is never closed");
      error_->foreign = !header_seen_;
    }
    if (!error_ && !header_seen_) fail(0, fmt::format("the file has no rows; expected the header {}", expected_header));
    if (!error_ && !utc_offset_)
      error_ = {1, 1, fmt::format("no comment line holds the offset from UTC; expected one such as '# {} -6'", offset_word)};
    if (error_) return tl::unexpected(*std::move(error_));
    return records_.finish(altitude_, last_line_).map([&](WeatherYear&& year) {
      year.utc_offset = Hours(*utc_offset_);
      if (*from_zero_) year.notes.emplace_back("its hours run from 0 to 23: each is taken to name its beginning");
      return std::move(year);
    });
  }

 private:
  /// From the first line that is no comment.
  [[nodiscard]] char separator() const {
    for (std::size_t at = 0; at < text_.size();) {
      const auto end = std::min(text_.find('\n', at), text_.size());
      const std::string_view line = trimmed(text_.substr(at, end - at));
      if (!line.empty() && line.front() != '#') return separator_of(line);
      at = end + 1;
    }
    return ',';
  }

  void read_row(const CsvRow& row) {
    last_line_ = row.line;
    if (row.text(0).starts_with('#')) return read_comment(row);
    if (!header_seen_) return read_header(row);
    read_record(row);
  }

  void read_comment(const CsvRow& row) {
    for (std::size_t i = 0; i < row.fields.size(); ++i) records_.read_about(row.text(i));
    if (const auto offset = number_after(row, offset_word, offset_range)) utc_offset_ = offset;
    if (const auto metres = number_after(row, elevation_word, elevation_range)) altitude_ = Metres(*metres);
  }

  std::optional<double> number_after(const CsvRow& row, std::string_view word, const Allowed& allowed) {
    std::string_view text = row.text(0);
    const auto at = text.find(word);
    if (at == std::string_view::npos) return std::nullopt;
    text = trimmed(text.substr(at + word.size()));
    text = text.substr(0, text.find_first_of(" \t,;"));
    const auto number = decimal(text);
    if (number && *number >= allowed.low && *number <= allowed.high) return number;
    fail(row.at(0), fmt::format("{} is {}; expected {}", word, shown(text), allowed.expected));
    return std::nullopt;
  }

  void read_header(const CsvRow& row) {
    header_seen_ = true;
    for (std::size_t i = 0; i < row.fields.size(); ++i) {
      const ColumnName name(row.text(i));
      const Column column{i, std::string(row.text(i))};
      if (name.has({"year"})) {
        note(year_, column, row);
      } else if (name.has({"month"})) {
        note(month_, column, row);
      } else if (name.has({"day"})) {
        note(day_, column, row);
      } else if (name.has({"hour"})) {
        note(hour_, column, row);
      } else if (name.is_temperature()) {
        note(temperature_, column, row), scale_ = name.scale();
      } else if (name.is_humidity()) {
        note(humidity_, column, row);
      } else if (name.is_pressure()) {
        note(pressure_, column, row), pascals_ = pressure_unit(name);
      }
    }
    if (!month_ || !day_ || !hour_ || !temperature_ || !humidity_) {
      fail(row.at(0), fmt::format("no column here is named {}; expected a header such as {}", missing_columns(), expected_header));
      if (error_) error_->foreign = !month_ && !day_ && !hour_ && !temperature_ && !humidity_;
      return;
    }
    if (!scale_) {
      fail(row.at(temperature_->at),
           fmt::format("the column {} does not say °C or °F; expected a name such as t_C or t_F", shown(temperature_->name)));
    }
    if (pressure_ && !pascals_) {
      return fail(row.at(pressure_->at),
                  fmt::format("the column {} has no unit that is known; expected a name such as p_hPa or p_Pa", shown(pressure_->name)));
    }
  }

  /// "day, hour".
  [[nodiscard]] std::string missing_columns() const {
    std::vector<std::string_view> missing;
    if (!month_) missing.push_back("month");
    if (!day_) missing.push_back("day");
    if (!hour_) missing.push_back("hour");
    if (!temperature_) missing.push_back("temperature");
    if (!humidity_) missing.push_back("relative humidity");
    return fmt::format("{}", fmt::join(missing, ", "));
  }

  /// Of a row that holds all that is read.
  [[nodiscard]] std::size_t fields_needed() const {
    std::size_t last = 0;
    for (const auto* column : {&year_, &month_, &day_, &hour_, &temperature_, &humidity_, &pressure_})
      if (*column) last = std::max(last, (*column)->at);
    return last + 1;
  }

  void note(std::optional<Column>& known, const Column& found, const CsvRow& row) {
    if (known) {
      return fail(row.at(found.at),
                  fmt::format("the column {} holds the same as {}; expected one of the kind", shown(found.name), shown(known->name)));
    }
    known = found;
  }

  static std::optional<double> pressure_unit(const ColumnName& name) {
    if (name.has({"hpa", "mbar", "mb"})) return 100;
    if (name.has({"kpa"})) return 1000;
    if (name.has({"pa"})) return 1;
    return std::nullopt;
  }

  void read_record(const CsvRow& row) {
    if (row.fields.size() < fields_needed())
      return fail(row.at(0), fmt::format("{} fields; expected {}", row.fields.size(), fields_needed()));
    WeatherRecord record{year_ ? std::optional(whole(row, *year_, 1800, 2200, "a year")) : std::nullopt,
                         whole(row, *month_, 1, 12, "a whole number from 1 to 12"),
                         whole(row, *day_, 1, 31, "a whole number from 1 to 31"),
                         hour_end(row),
                         0,
                         std::nullopt,
                         std::nullopt,
                         std::nullopt,
                         row.line};
    const auto kelvins = [this](double t) { return celsius(t, *scale_).value(); };
    if (const auto t = value(row, *temperature_, temperature_range, kelvins)) record.temperature = Celsius(*t);
    if (const auto rh = value(row, *humidity_, humidity_range, [](double v) { return v; })) record.humidity = RelativeHumidity(*rh / 100);
    if (pressure_) {
      const auto pascals = [this](double p) { return p * *pascals_; };
      if (const auto p = value(row, *pressure_, pressure_range, pascals)) record.pressure = Pascals(*p);
    }
    if (error_) return;
    if (auto wrong = records_.add(record)) fail(row.at(0), *std::move(wrong));
  }

  /// A file whose first row has hour 0 names beginnings.
  int hour_end(const CsvRow& row) {
    if (!from_zero_) from_zero_ = row.text(hour_->at) == "0";
    if (*from_zero_) return 1 + whole(row, *hour_, 0, 23, "the hour's beginning, as in the first row, a whole number from 0 to 23");
    return whole(row, *hour_, 1, 24, "the hour's end, a whole number from 1 to 24");
  }

  int whole(const CsvRow& row, const Column& column, int low, int high, std::string_view expected) {
    const std::string_view text = row.text(column.at);
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error == std::errc() && end == text.data() + text.size() && value >= low && value <= high) return value;
    fail(row.at(column.at), fmt::format("{} is {}; expected {}", column.name, shown(text), expected));
    return low;
  }

  /// In the unit of the range; none where the field is empty, or after noting an error.
  template <class ToUnit>
  std::optional<double> value(const CsvRow& row, const Column& column, const Allowed& allowed, ToUnit to_unit) {
    const std::string_view text = row.text(column.at);
    if (text.empty()) return std::nullopt;
    if (const auto number = decimal(text)) {
      const double v = to_unit(*number);
      if (v >= allowed.low && v <= allowed.high) return v;
    }
    fail(row.at(column.at), fmt::format("{} is {}; expected {}", column.name, shown(text), allowed.expected));
    return std::nullopt;
  }

  void fail(std::size_t byte, std::string message) {
    if (!error_) error_ = error_at(text_, byte, std::move(message));
  }

  std::string_view text_;
  WeatherGatherer records_;
  std::optional<Column> year_, month_, day_, hour_, temperature_, humidity_, pressure_;
  std::optional<Scale> scale_;
  std::optional<bool> from_zero_;  // the hours; as the first row has it
  std::optional<double> pascals_;  // in one of the file's unit of pressure
  std::optional<double> utc_offset_;
  std::optional<Metres> altitude_;
  std::optional<ReadError> error_;
  int last_line_ = 1;
  bool header_seen_ = false;
};

}  // namespace

tl::expected<WeatherYear, ReadError> read_year_csv(std::string_view text) {
  if (auto error = unreadable_lines(text)) return tl::unexpected(*std::move(error));
  return YearReader(text).read();
}

}  // namespace coatday::climate
