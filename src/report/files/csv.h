#pragma once
// Tables for spreadsheets, after RFC 4180.

#include <string>
#include <string_view>
#include <vector>

namespace coatday::report {

/// Any text as a field. What a spreadsheet would run as a formula gets an apostrophe before it; control characters but line breaks are replaced.
[[nodiscard]] std::string csv_text(std::string_view);
/// With so many decimals, never "-0"; a spreadsheet takes it for a number.
[[nodiscard]] std::string csv_number(double, int decimals);
/// Fields with commas between, ended by CR and LF.
[[nodiscard]] std::string csv_row(const std::vector<std::string>& fields);

}  // namespace coatday::report
