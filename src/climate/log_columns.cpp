#include "climate/log_columns.h"

#include <fmt/core.h>

#include <algorithm>
#include <utility>

#include "climate/log_date.h"
#include "quantity/nearest.h"

namespace coatday::climate {
namespace {

constexpr int most_header_rows = 100;
constexpr std::string_view example = "Date/Time,Temperature °C,Humidity %";

bool same_name(std::string_view a, std::string_view b) {
  const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
  a = trimmed(a), b = trimmed(b);
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [&](char x, char y) { return lower(x) == lower(y); });
}

using Indices = std::vector<std::size_t>;

/// The columns of a row with the given name, or with that kind of name where none is given.
template <class Kind>
Indices columns(const CsvRow& row, const std::string& stated, Kind kind) {
  Indices found;
  for (std::size_t i = 0; i < row.fields.size(); ++i) {
    if (stated.empty() ? kind(ColumnName(row.text(i))) : same_name(stated, row.text(i))) found.push_back(i);
  }
  return found;
}

/// All columns of one line that could be what is sought.
struct Candidates {
  Indices date, time, temperature, humidity;

  Candidates(const CsvRow& row, const LogForm& form)
      : date(columns(row, form.date, [&](const ColumnName& n) { return form.time.empty() && n.is_date() && !n.is_clock(); })),
        time(columns(row, form.time, [](const ColumnName& n) { return n.is_clock(); })),
        temperature(columns(row, form.temperature, [](const ColumnName& n) { return n.is_temperature(); })),
        humidity(columns(row, form.humidity, [](const ColumnName& n) { return n.is_humidity(); })) {
    // A column with both date and time in its name holds both, and needs no other.
    const auto both = columns(row, form.time, [](const ColumnName& n) { return n.is_date() && n.is_clock(); });
    if (form.time.empty() && form.date.empty() && !both.empty()) time = both, date.clear();
    if (time.empty()) std::swap(time, date);  // "Date" alone, with the time in it
  }

  [[nodiscard]] bool is_header(const LogForm& form) const {
    return !time.empty() && !temperature.empty() && (form.humidity.empty() || !humidity.empty()) && (form.date.empty() || !date.empty());
  }
};

class Finder {
 public:
  Finder(std::string_view text, const LogForm& form) : text_(text), form_(form) {}

  tl::expected<LogColumns, ReadError> find() {
    std::size_t most = 0;
    std::optional<tl::expected<LogColumns, ReadError>> best;
    for (const char separator : {',', ';', '\t'}) {
      CsvReader reader(text_, separator);
      for (int i = 0; i < most_header_rows; ++i) {
        const CsvRow* row = reader.next();
        if (row == nullptr) break;
        if (!Candidates(*row, form_).is_header(form_)) continue;
        if (row->fields.size() > most) best = read(*row, separator);
        most = std::max(most, row->fields.size());
        break;
      }
    }
    if (!best) return tl::unexpected(ReadError{1, 1, no_header(), usual_names().empty()});
    return *std::move(best);
  }

 private:
  [[nodiscard]] std::string no_header() const {
    if (auto message = not_among()) return *std::move(message);
    return fmt::format("none of the first {} lines names a column of time and one of temperature; expected a header such as {}",
                       most_header_rows, example);
  }

  /// If the table is found by the usual names but not by the given ones: which of the given ones it does not have.
  [[nodiscard]] std::optional<std::string> not_among() const {
    for (const std::string* stated : {&form_.date, &form_.time, &form_.temperature, &form_.humidity}) {
      if (stated->empty()) continue;
      const std::vector<std::string> names = usual_names();
      if (std::any_of(names.begin(), names.end(), [&](const std::string& name) { return same_name(name, *stated); })) continue;
      const auto meant = nearest_word(*stated, names);
      std::string all;
      for (const std::string& name : names) all += (all.empty() ? "" : ", ") + shown(name);
      return fmt::format("no column is named {}; {}", shown(*stated),
                         meant         ? fmt::format("did you mean {}?", shown(*meant))
                         : all.empty() ? "no line names a time and a temperature"
                                       : "there are " + all);
    }
    return std::nullopt;
  }

  /// Of the first line that names a time and a temperature as is usual.
  [[nodiscard]] std::vector<std::string> usual_names() const {
    std::vector<std::string> names;
    for (const char separator : {',', ';', '\t'}) {
      CsvReader reader(text_, separator);
      for (int i = 0; i < most_header_rows && names.empty(); ++i) {
        const CsvRow* row = reader.next();
        if (row == nullptr) break;
        if (!Candidates(*row, {}).is_header({})) continue;
        for (const CsvField& field : row->fields) names.emplace_back(field.text);
      }
    }
    return names;
  }

  tl::expected<LogColumns, ReadError> read(const CsvRow& row, char separator) const {
    const Candidates found(row, form_);
    LogColumns columns;
    columns.separator = separator;
    columns.header_line = row.line;
    for (const auto& [which, what] : {std::pair(&found.date, "date"), std::pair(&found.time, "time"),
                                      std::pair(&found.temperature, "temperature"), std::pair(&found.humidity, "humidity")}) {
      if (which->size() < 2) continue;
      return fail(row, (*which)[1],
                  fmt::format("the columns {} and {} could both be the {}; write which one", shown(row.text((*which)[0])),
                              shown(row.text((*which)[1])), what));
    }
    if (!found.date.empty()) columns.date = found.date[0];
    columns.time = found.time[0];
    columns.temperature = found.temperature[0];
    if (!found.humidity.empty()) columns.humidity = found.humidity[0];
    const auto scale = form_.scale ? form_.scale : ColumnName(row.text(columns.temperature)).scale();
    if (!scale) {
      return fail(row, columns.temperature,
                  fmt::format("the column {} does not say °C or °F; write its 'unit'", shown(row.text(columns.temperature))));
    }
    columns.scale = *scale;
    columns.percent = columns.humidity && ColumnName(row.text(*columns.humidity)).in_percent();
    columns.offset = offset_in_name(row.text(columns.time));
    return columns;
  }

  [[nodiscard]] tl::unexpected<ReadError> fail(const CsvRow& row, std::size_t column, std::string message) const {
    return tl::unexpected(error_at(text_, row.at(column), std::move(message)));
  }

  std::string_view text_;
  const LogForm& form_;
};

}  // namespace

tl::expected<LogColumns, ReadError> find_log_columns(std::string_view text, const LogForm& form) { return Finder(text, form).find(); }

}  // namespace coatday::climate
