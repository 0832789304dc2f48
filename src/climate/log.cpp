#include "climate/log.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <utility>

#include "climate/log_clock.h"
#include "climate/log_notes.h"
#include "climate/log_table.h"
#include "climate/logged_air.h"

namespace coatday::climate {
namespace {

constexpr double coldest = -40, hottest = 60;  // °C, the air of a room
constexpr double warmest_reading = 130;        // beyond, a number marks what is missing
constexpr double most_humid = 105;             // %, what a sound sensor may read in saturated air; above that it is broken
constexpr double driest = 0.1;                 // %, below what any room has: a dead sensor shows 0 or next to it
/// Judgement: a whole-percent sensor that shows the same through 6 h and 3 K is dead, since 3 K move the humidity of unchanged air by a
/// sixth of itself; and so is one through a day and 1 K, by a twentieth. Where the temperature moves less, it looks like steady air.
struct Stuck {
  Hours hours;
  double kelvins;
};
constexpr std::array stuck{Stuck{Hours(6), 3}, Stuck{Hours(24), 1}};

struct Row {
  Instant time;
  int line = 0;
  double temperature = 0;
  std::optional<double> humidity;  // percent
};

class Cleaner {
 public:
  Cleaner(LogTable table, const LogForm& form, const Zone& zone) : table_(std::move(table)), form_(form), zone_(zone) {}

  tl::expected<Log, ReadError> clean(std::string name) {
    log_.name = std::move(name);
    tell(table_.without_time, "no date with a time that can be read; dropped");
    oldest_first();
    if (auto wrong = too_warm()) return tl::unexpected(*std::move(wrong));
    take_rows();
    if (rows_.size() < 2)
      return tl::unexpected(ReadError{first_line_, 1, "the file has fewer than two readings of a temperature from -40 to 60 °C"});
    put_in_order();
    merge_repeated();
    drop_impossible_humidity();
    drop_stuck_humidity();
    judge_gaps();
    if (bridgeable_ == 0) {
      return tl::unexpected(
          ReadError{first_line_, 1, "no two readings are within 3 h of each other; expected readings that show how the air moves"});
    }
    for (const Row& row : rows_) {
      Reading reading{row.time, Celsius(row.temperature), std::nullopt};
      if (row.humidity) reading.humidity = RelativeHumidity(*row.humidity / 100);
      log_.readings.push_back(reading);
    }
    const auto day = [this](const Row& row) { return long_date(day_of(zone_.to_local(row.time))); };
    log_.days = day(rows_.front()) + " to " + day(rows_.back());
    return std::move(log_);
  }

 private:
  void tell(const std::vector<int>& lines, std::string_view what) {
    if (!lines.empty()) log_.notes.push_back(fmt::format("{}: {}", rows_text(lines), what));
  }

  /// Many loggers write the newest reading first.
  void oldest_first() {
    std::ptrdiff_t forward = 0;
    for (std::size_t i = 1; i < table_.rows.size(); ++i) {
      if (table_.rows[i].time != table_.rows[i - 1].time) forward += table_.rows[i].time > table_.rows[i - 1].time ? 1 : -1;
    }
    if (forward < 0) std::reverse(table_.rows.begin(), table_.rows.end());
    if (!table_.rows.empty()) first_line_ = table_.rows.front().line;
  }

  /// Of all rows: where the half of them that is warmer cannot be, dropping it would leave the colder half to mislead.
  [[nodiscard]] std::optional<ReadError> too_warm() const {
    std::vector<double> all;
    for (const LogRow& row : table_.rows)
      if (row.temperature >= coldest && row.temperature < warmest_reading) all.push_back(row.temperature);
    if (all.empty()) return std::nullopt;
    const auto middle = all.begin() + static_cast<std::ptrdiff_t>(all.size() / 2);
    std::nth_element(all.begin(), middle, all.end());
    if (*middle <= warmest_middle) return std::nullopt;
    return ReadError{first_line_, 1,
                     fmt::format("half of the temperatures are {:.0f} °C or more, which no shop is; are they in °F?", *middle)};
  }

  void take_rows() {
    std::vector<LocalTime> times;
    for (const LogRow& row : table_.rows) times.push_back(row.time);
    const ClockInstants clock = instants_of(times, form_.clock.value_or(LogClock::shop), zone_);
    for (std::size_t i = 0; i < table_.rows.size(); ++i) {
      const LogRow& row = table_.rows[i];
      if (row.temperature < coldest || row.temperature > hottest) {
        table_.without_temperature.push_back(row.line);
        continue;
      }
      const Instant time = row.offset ? Instant(row.time.time_since_epoch()) - *row.offset : clock.instants[i];
      rows_.push_back({time, row.line, row.temperature, row.humidity});
    }
    tell(table_.without_temperature, "no temperature from -40 to 60 °C; dropped");
    tell(lines_by_clock(clock.second), "a wall time that came twice when summer time ended; taken as the second time");
    tell(lines_by_clock(clock.never),
         "a wall time that summer time skips; taken as an hour later. Where the logger's clock is never put forward, write 'clock: "
         "standard'");
  }

  [[nodiscard]] std::vector<int> lines_by_clock(const std::vector<std::size_t>& indices) const {
    std::vector<int> lines;
    for (const std::size_t i : indices)
      if (!table_.rows[i].offset) lines.push_back(table_.rows[i].line);
    return lines;
  }

  void put_in_order() {
    std::vector<int> late;
    Instant latest = rows_.front().time;
    for (const Row& row : rows_) {
      if (row.time < latest) late.push_back(row.line);
      latest = std::max(latest, row.time);
    }
    std::stable_sort(rows_.begin(), rows_.end(), [](const Row& a, const Row& b) { return a.time < b.time; });
    tell(late, "earlier than a row before; put in order");
  }

  /// Several readings of one moment count as their mean, so that their order in the file does not matter.
  void merge_repeated() {
    std::vector<int> again;
    std::vector<Row> merged;
    for (std::size_t i = 0; i < rows_.size();) {
      Row sum = rows_[i];
      double humidity = 0;
      int count = 0, humid = 0;
      sum.temperature = 0;
      for (; i < rows_.size() && rows_[i].time == sum.time; ++i, ++count) {
        sum.temperature += rows_[i].temperature;
        if (rows_[i].humidity && possible(*rows_[i].humidity)) humidity += *rows_[i].humidity, ++humid;
        if (count > 0) again.push_back(rows_[i].line);
      }
      sum.temperature /= count;
      if (count > 1 && humid > 0) sum.humidity = humidity / humid;
      merged.push_back(sum);
    }
    rows_ = std::move(merged);
    tell(again, "the time of another row; the mean of both is taken");
  }

  static bool possible(double percent) { return percent >= driest && percent <= most_humid; }

  void drop_impossible_humidity() {
    if (!table_.has_humidity) {
      log_.notes.emplace_back("no column of humidity: the moisture is that of the next source of air");
      return;
    }
    if (table_.fractions_as_percent)
      log_.notes.emplace_back("no humidity is above 1: taken as fractions, though the column's name says percent");
    std::vector<int> dead;
    for (Row& row : rows_) {
      if (row.humidity && possible(*row.humidity)) {
        row.humidity = std::min(*row.humidity, 100.0);
      } else {
        row.humidity.reset();
        dead.push_back(row.line);
      }
    }
    tell(dead, "no humidity, or none that can be (0.1 to 105 %); the temperature alone is used");
  }

  /// Runs of one and the same humidity while the temperature moves.
  void drop_stuck_humidity() {
    for (std::size_t i = 0; i < rows_.size();) {
      std::size_t end = i + 1;
      double low = rows_[i].temperature, high = low;
      while (end < rows_.size() && rows_[i].humidity && rows_[end].humidity == rows_[i].humidity) {
        low = std::min(low, rows_[end].temperature);
        high = std::max(high, rows_[end].temperature);
        ++end;
      }
      const Hours span = rows_[end - 1].time - rows_[i].time;
      const bool dead = std::any_of(stuck.begin(), stuck.end(), [&](const Stuck& s) { return span >= s.hours && high - low >= s.kelvins; });
      if (dead) drop_humidity(i, end, high - low);
      i = end;
    }
  }

  void drop_humidity(std::size_t from, std::size_t end, double moved) {
    const double stuck_at = *rows_[from].humidity;
    std::vector<int> lines;
    for (std::size_t i = from; i < end; ++i) {
      lines.push_back(rows_[i].line);
      rows_[i].humidity.reset();
    }
    tell(lines, fmt::format("humidity stuck at {:.4g} % for {} while the temperature moved by {:.1f} K: the sensor is taken as dead and "
                            "the temperature alone used",
                            stuck_at, format_span(rows_[end - 1].time - rows_[from].time), moved));
  }

  void judge_gaps() {
    std::vector<std::chrono::seconds> steps;
    for (std::size_t i = 1; i < rows_.size(); ++i) steps.push_back(rows_[i].time - rows_[i - 1].time);
    std::vector<std::chrono::seconds> sorted = steps;
    if (sorted.empty()) return;
    const auto middle = sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2);
    std::nth_element(sorted.begin(), middle, sorted.end());
    log_.usual_step = std::chrono::ceil<Minutes>(*middle);
    std::vector<int> bridged;
    for (std::size_t i = 0; i < steps.size(); ++i) {
      if (steps[i] <= longest_log_bridge) ++bridgeable_;
      if (steps[i] > longest_log_bridge) {
        tell_gap(i);
      } else if (steps[i] > bridged_step(log_)) {
        bridged.push_back(rows_[i].line);
      }
    }
    tell(bridged, "no reading for longer than usual after it; bridged in a straight line");
    if (long_gaps_ > most_gaps)
      log_.notes.push_back(fmt::format("{} more gaps of over 3 h; the next source of air goes on in them", long_gaps_ - most_gaps));
  }

  void tell_gap(std::size_t i) {
    if (++long_gaps_ > most_gaps) return;
    log_.notes.push_back(fmt::format("after row {}: no reading for {} from {}; the next source of air goes on", rows_[i].line,
                                     format_span(rows_[i + 1].time - rows_[i].time), day_and_time(zone_.to_local(rows_[i].time))));
  }

  static constexpr int most_gaps = 5;  // named one by one

  LogTable table_;
  const LogForm& form_;
  const Zone& zone_;
  std::vector<Row> rows_;
  Log log_;
  int first_line_ = 1;
  int bridgeable_ = 0, long_gaps_ = 0;
};

}  // namespace

Minutes bridged_step(const Log& log) { return std::max(Minutes(30), 5 * log.usual_step / 2); }

std::string span_text(const Log& log, const Zone& zone) {
  const auto at = [&zone](const Reading& reading) {
    const LocalTime time = zone.to_local(reading.time);
    return long_date(day_of(time)) + " " + clock_time(time);
  };
  return fmt::format(
      "{} readings from {} to {}; in gaps of over {} and beyond them the next source of air goes on, the step between the two "
      "fading with a time constant of {} (judgement)",
      log.readings.size(), at(log.readings.front()), at(log.readings.back()), format_span(longest_log_bridge),
      format_span(LoggedAir::fading));
}

tl::expected<Log, ReadError> read_log(std::string_view text, std::string name, const LogForm& form, const Zone& zone) {
  auto table = read_log_table(text, form);
  if (!table) return tl::unexpected(table.error());
  return Cleaner(*std::move(table), form, zone).clean(std::move(name));
}

}  // namespace coatday::climate
