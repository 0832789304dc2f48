#pragma once
// Table 13-5, in its order. A row marked `from memory` was not compared with the printed table.

#include <array>

#include "wood/species.h"

namespace coatday::wood {

extern const std::array<Species, 96> species_table;

}  // namespace coatday::wood
