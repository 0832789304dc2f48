#pragma once
// Words about wood, as files and the command line hold them.

#include <string>
#include <string_view>

#include "quantity/text.h"

namespace coatday::input {

[[nodiscard]] Parsed<std::string> parse_species(std::string_view);  ///< the id of a species that wood:: knows

}  // namespace coatday::input
