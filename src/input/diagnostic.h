#pragma once
// One mistake in a file, and how it is printed.

#include <string>
#include <string_view>

#include "quantity/location.h"

namespace coatday::input {

/// "order.yaml:14:11: error: unknown finish 'sealar'; did you mean 'sealer'?", then the line and a caret under it.
struct Diagnostic {
  Location where;
  std::string message;
  std::string line;  ///< the text of that line; empty where there is none
};
/// As printed: three lines where the line is known. Columns count characters.
[[nodiscard]] std::string to_text(const Diagnostic&);

/// 'the text' for a message: one line, cut when long.
[[nodiscard]] std::string in_quotes(std::string_view);

}  // namespace coatday::input
