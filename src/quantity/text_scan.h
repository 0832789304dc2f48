#pragma once
// Numbers and signs as people type them. Only this room includes it.

#include <optional>
#include <string>
#include <string_view>

namespace coatday::text {

/// A number at the start of a text: 12, 12.5, 1/2, 2 1/8, 2-1/8.
struct Amount {
  double value = 0;
  bool whole = false;
  std::string_view rest;
};

/// ASCII for the typographic signs that stand in measurements (², µ, ½, ″, no-break space); single spaces, none beside a slash.
[[nodiscard]] std::string plain(std::string_view);
/// 'the text' for an error: one line, without control characters, cut when long.
[[nodiscard]] std::string quoted(std::string_view);
/// Nothing where the text starts with no number.
[[nodiscard]] std::optional<Amount> read_amount(std::string_view);

}  // namespace coatday::text
