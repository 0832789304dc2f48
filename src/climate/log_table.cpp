#include "climate/log_table.h"

#include <fmt/core.h>

#include <algorithm>
#include <utility>

#include "climate/log_columns.h"
#include "climate/log_date.h"

namespace coatday::climate {
namespace {

/// A row whose date still waits for the order of day and month.
struct Undated {
  LogRow row;
  WrittenTime written;
  std::size_t at = 0;
};

class LogReader {
 public:
  LogReader(std::string_view text, const LogForm& form, const LogColumns& columns) : text_(text), form_(form), columns_(columns) {}

  tl::expected<LogTable, ReadError> read() {
    CsvReader rows(text_, columns_.separator);
    const CsvRow* row = nullptr;
    while ((row = rows.next()) != nullptr)
      if (row->line > columns_.header_line) read_row(*row);
    if (rows.open_quote()) fail(*rows.open_quote(), "a quote that is never closed");
    if (!error_) judge_times();
    if (!error_) date_rows();
    if (error_) return tl::unexpected(*std::move(error_));
    percent();
    table_.has_humidity = columns_.humidity.has_value();
    return std::move(table_);
  }

 private:
  void read_row(const CsvRow& row) {
    std::string time(row.text(columns_.time));
    if (columns_.date) time = std::string(row.text(*columns_.date)) + " " + time;
    const std::size_t at = row.at(columns_.date.value_or(columns_.time));
    const auto written = read_written_time(time);
    const auto temperature = decimal(row.text(columns_.temperature));
    if (!written) {
      if (table_.without_time.empty()) first_bad_time_ = {at, time};
      table_.without_time.push_back(row.line);
      return;
    }
    if (!temperature) {
      if (table_.without_temperature.empty())
        first_bad_temperature_ = {row.at(columns_.temperature), std::string(row.text(columns_.temperature))};
      table_.without_temperature.push_back(row.line);
      return;
    }
    LogRow read{row.line, {}, written->offset, celsius(*temperature, columns_.scale).value(), std::nullopt};
    if (!read.offset && !form_.clock) read.offset = columns_.offset;
    if (columns_.humidity) read.humidity = decimal(row.text(*columns_.humidity));
    undated_.push_back({read, *written, at});
  }

  /// A table without readings, or of which most is none, was not understood.
  void judge_times() {
    const std::size_t read = undated_.size();
    if (table_.without_time.size() > read + table_.without_temperature.size()) {
      return fail(first_bad_time_.first,
                  fmt::format("{} is no date with a time; expected one such as 2027-01-11 08:00", shown(first_bad_time_.second)));
    }
    if (table_.without_temperature.size() > read) {
      return fail(first_bad_temperature_.first,
                  fmt::format("{} is no temperature; expected a number", shown(first_bad_temperature_.second)));
    }
    if (read == 0) fail(text_.size(), "no readings follow the line that names the columns");
  }

  /// The order of day and month: given, or clear from a day above 12.
  std::optional<DateOrder> order() {
    std::optional<DateOrder> order = form_.dates;
    for (const Undated& u : undated_) {
      if (u.written.order) continue;
      const auto [first, second] = u.written.day_and_month;
      const bool day_first = first > 12, month_first = second > 12;
      if (!day_first && !month_first) continue;
      const auto here = day_first ? DateOrder::day_first : DateOrder::month_first;
      if (order.value_or(here) != here) {
        fail(u.at, fmt::format("this date has no month {}, where those before it, or 'dates', say {} first", day_first ? first : second,
                               day_first ? "month" : "day"));
        return std::nullopt;
      }
      order = here;
    }
    const auto open = std::find_if(undated_.begin(), undated_.end(), [](const Undated& u) { return !u.written.order; });
    if (!order && open != undated_.end())
      fail(open->at, "dates of this file could have the day or the month first; write 'dates: day first' or 'dates: month first'");
    return order;
  }

  void date_rows() {
    const DateOrder found = order().value_or(DateOrder::month_first);
    if (error_) return;
    for (Undated& u : undated_) {
      if (const auto time = u.written.local(found)) {
        u.row.time = *time;
        table_.rows.push_back(u.row);
      } else {
        table_.without_time.push_back(u.row.line);
      }
    }
    std::sort(table_.without_time.begin(), table_.without_time.end());
    if (table_.rows.empty())
      fail(undated_.front().at, fmt::format("no row has a date that is in the calendar and from 2000 to {}", last_year));
  }

  /// Humidity that never passes 1 is a fraction, whatever its name says.
  void percent() {
    double highest = 0;
    for (const LogRow& row : table_.rows) highest = std::max(highest, row.humidity.value_or(0));
    if (highest > most_of_a_fraction) return;
    for (LogRow& row : table_.rows)
      if (row.humidity) *row.humidity *= 100;
    table_.fractions_as_percent = columns_.percent && highest > 0;
  }

  void fail(std::size_t byte, std::string message) {
    if (!error_) error_ = error_at(text_, byte, std::move(message));
  }

  std::string_view text_;
  const LogForm& form_;
  const LogColumns& columns_;
  std::vector<Undated> undated_;
  std::pair<std::size_t, std::string> first_bad_time_, first_bad_temperature_;
  LogTable table_;
  std::optional<ReadError> error_;
};

}  // namespace

tl::expected<LogTable, ReadError> read_log_table(std::string_view text, const LogForm& form) {
  if (auto error = unreadable_lines(text)) return tl::unexpected(*std::move(error));
  const auto columns = find_log_columns(text, form);
  if (!columns) return tl::unexpected(columns.error());
  return LogReader(text, form, *columns).read();
}

}  // namespace coatday::climate
