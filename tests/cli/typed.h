#pragma once
// An environment whose files a test types.

#include <map>
#include <string>

#include "cli/environment.h"

namespace coatday::cli {

using Files = std::map<std::string, std::string>;  ///< texts by their names

/// Files are found by name, in whatever folder: those that are typed, then the climate of the samples, then what is on the disk. Finishes and
/// schedules are the shipped ones. It is 15 January 2027.
[[nodiscard]] Environment typed(Files);

}  // namespace coatday::cli
