#pragma once
// Completion of the command line, made from the same rows as the help.

#include <string>

namespace coatday::cli {

/// For bash: commands, topics, options, and the words that an option takes. Everywhere else it completes file names.
[[nodiscard]] std::string bash_completion();

}  // namespace coatday::cli
