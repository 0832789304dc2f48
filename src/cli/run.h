#pragma once
// The whole program but for the writing.

#include "cli/environment.h"
#include "cli/outcome.h"

namespace coatday::cli {

/// `words` without the program's name. A fault of our own, thrown as an exception, is an outcome too.
[[nodiscard]] Outcome run(const std::vector<std::string>& words, const Environment&);

}  // namespace coatday::cli
