#pragma once
// A part against its own faces, its schedule, and the places where it is to dry.

#include "input/part.h"

namespace coatday::input {

/// Adds a mistake for everything in which a part contradicts its faces, its schedule or the drying places.
void check_part(const piece::Part&, const Common&, const Surroundings&, Mistakes&);

}  // namespace coatday::input
