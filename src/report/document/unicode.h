#pragma once
// Code points of UTF-8 text, and what they do to a terminal.

#include <string>
#include <string_view>

namespace coatday::report {

/// Takes the first code point off `rest`, which is not empty. U+FFFD for a byte that is no UTF-8.
[[nodiscard]] char32_t take_code_point(std::string_view& rest);
void append_utf8(std::string&, char32_t);

/// The code point itself where it only shows a sign; a space for line breaks and tabs; U+FFFD for what would move the cursor, start an
/// escape sequence, turn the direction of writing or hide.
[[nodiscard]] char32_t harmless(char32_t);

/// Columns of a terminal that it takes: 0 for combining marks, 2 for wide signs, else 1. Source: Unicode, UAX #11 and general category Mn
/// (the ranges in use in living scripts; from memory).
[[nodiscard]] int columns_of(char32_t);

}  // namespace coatday::report
