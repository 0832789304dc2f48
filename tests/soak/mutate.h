#pragma once
// Changes a text at random: single bytes, lines, and numbers that become extremes.

#include <string>

#include "tests/soak/random.h"

namespace coatday::soak {

[[nodiscard]] std::string mutated(Random&, std::string text);

}  // namespace coatday::soak
