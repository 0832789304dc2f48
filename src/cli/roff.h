#pragma once
// Text for a manual page: what in it could steer the formatter is written so that it cannot.

#include <string>
#include <string_view>

namespace coatday::cli::roff {

/// A word that is typed, or a whole command line: every hyphen stays a hyphen-minus, so that it can be copied.
[[nodiscard]] std::string literal(std::string_view);
/// Running text. Options in it (" --from") keep their hyphens, too.
[[nodiscard]] std::string prose(std::string_view);

// Lines of the page, each ended.
[[nodiscard]] std::string section(std::string_view title);
[[nodiscard]] std::string subsection(std::string_view title);
[[nodiscard]] std::string paragraph(std::string_view text);
/// A label with its text hanging beside or below it.
[[nodiscard]] std::string item(std::string_view label, std::string_view text);
/// Command lines, set apart and not filled.
[[nodiscard]] std::string example(std::string_view line);

}  // namespace coatday::cli::roff
