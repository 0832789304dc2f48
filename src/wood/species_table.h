#pragma once
// The Wood Handbook's table 13-5, in its order. What is marked `from memory` was not compared with the table.

#include <array>

#include "wood/species.h"

namespace coatday::wood {

extern const std::array<Species, 96> species_table;

}  // namespace coatday::wood
