#include "report/files/csv.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "report/document/lines.h"

namespace coatday::report {
namespace {

/// Spreadsheets begin a formula with any of these, some of them in their wide forms too, and some pass over spaces before them.
constexpr std::array<std::string_view, 8> formula_signs{"=", "+", "-", "@", "\uff1d", "\uff0b", "\uff0d", "\uff20"};

bool reads_as_formula(std::string_view text) {
  constexpr std::string_view no_break_space = "\u00a0";
  while (!text.empty()) {
    if (text.front() == ' ' || text.front() == '\n') {
      text.remove_prefix(1);
    } else if (text.starts_with(no_break_space)) {
      text.remove_prefix(no_break_space.size());
    } else {
      break;
    }
  }
  return std::any_of(formula_signs.begin(), formula_signs.end(), [text](std::string_view sign) { return text.starts_with(sign); });
}

std::string with_plain_spaces(std::string text) {
  for (std::size_t at = 0; (at = text.find("\u00a0", at)) != std::string::npos;) text.replace(at, 2, " ");
  return text;
}

}  // namespace

std::string csv_text(std::string_view typed) {
  std::string text = with_plain_spaces(harmless_text(typed));
  if (reads_as_formula(text)) text.insert(0, "'");
  if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
  std::string quoted = "\"";
  for (const char c : text) quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
  return quoted + '"';
}

std::string csv_number(double value, int decimals) {
  const double unit = std::pow(10.0, decimals);
  return fmt::format("{:.{}f}", std::round(value * unit) / unit + 0.0, decimals);  // + 0.0: no negative zero
}

std::string csv_row(const std::vector<std::string>& fields) {
  std::string row;
  for (const std::string& field : fields) row += (&field == &fields.front() ? "" : ",") + field;
  return row + "\r\n";
}

}  // namespace coatday::report
