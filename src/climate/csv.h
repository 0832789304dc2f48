#pragma once
// Tables as text after RFC 4180, with any one separator: quoted fields may hold separators, line ends and doubled quotes.

#include <algorithm>
#include <cstddef>
#include <deque>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace coatday::climate {

/// What is wrong in a file, and where: lines and columns from 1, columns in characters.
struct ReadError {
  int line = 1;
  int column = 1;
  std::string message;   ///< what was found and what was expected; completes "…: error: "
  bool foreign = false;  ///< nothing here looks like such a table: the file may hold anything, and none of it is shown
};
[[nodiscard]] ReadError error_at(std::string_view text, std::size_t byte, std::string message);

struct CsvField {
  std::string_view text;  ///< without quotes, and without blanks around it
  std::size_t at = 0;     ///< where it begins, in bytes of the whole text
};

struct CsvRow {
  int line = 0;  ///< where it begins, from 1
  std::vector<CsvField> fields;

  /// The field of that column; empty where the row is too short.
  [[nodiscard]] std::string_view text(std::size_t column) const {
    return column < fields.size() ? fields[column].text : std::string_view();
  }
  [[nodiscard]] std::size_t at(std::size_t column) const { return fields[std::min(column, fields.size() - 1)].at; }
};

/// Row after row of a text that outlives it. Blank lines are passed over; a line that begins with '#' is one field.
class CsvReader {
 public:
  CsvReader(std::string_view text, char separator) : text_(text), separator_(separator) {}

  /// The next row, or null at the end and where a quote is never closed. Fields are valid as long as the reader.
  [[nodiscard]] const CsvRow* next();
  /// Where the quote stands that is never closed, in bytes.
  [[nodiscard]] std::optional<std::size_t> open_quote() const { return open_quote_; }

 private:
  void read_row();
  [[nodiscard]] CsvField plain_field();
  [[nodiscard]] CsvField quoted_field();
  void skip_blanks();
  [[nodiscard]] bool ends_field(std::size_t at) const { return at >= text_.size() || text_[at] == separator_ || text_[at] == '\n'; }

  std::string_view text_;
  char separator_;
  std::size_t at_ = 0;
  int line_ = 1;
  CsvRow row_;
  std::deque<std::string> unquoted_;
  std::optional<std::size_t> open_quote_;
};

/// Without blanks at its ends.
[[nodiscard]] std::string_view trimmed(std::string_view);
/// The whole text as a number, finite; a leading '+' is taken, and a decimal comma.
[[nodiscard]] std::optional<double> decimal(std::string_view);
/// In UTF-8 without control characters; bytes that are not UTF-8 are read as Latin-1, the usual other one.
[[nodiscard]] std::string printable(std::string_view);
/// 'what was found', fit to print: short, one line, UTF-8.
[[nodiscard]] std::string shown(std::string_view);
/// Why the text cannot be read as lines, where it is in UTF-16 or its lines end in carriage returns alone.
[[nodiscard]] std::optional<ReadError> unreadable_lines(std::string_view text);

}  // namespace coatday::climate
