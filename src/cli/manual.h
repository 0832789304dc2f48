#pragma once
// The manual page, made from the same rows and topics as the help.

#include <string>

namespace coatday::cli {

/// For `man`, in the macros of man(7). Plain ASCII; other signs are named by their number.
[[nodiscard]] std::string manual();

}  // namespace coatday::cli
