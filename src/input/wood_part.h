#pragma once
// A part's wood: readings of its moisture, what is under its faces, and the fixings that hold it.

#include <vector>

#include "input/part.h"

namespace coatday::input {

/// Readings of a moisture meter under the key 'moisture': one text, or a list of maps.
[[nodiscard]] std::vector<piece::MeterReading> read_moisture(const Fields&, const Surroundings&, Mistakes&);

/// A part's own keys about its wood, once its shape and its species are known.
void read_wood(const Fields&, const Common&, piece::Part&, Mistakes&);

}  // namespace coatday::input
