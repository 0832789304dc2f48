#pragma once
// What files and the command line say of wood.

#include <string>
#include <string_view>
#include <vector>

#include "quantity/text.h"
#include "wood/movement.h"

namespace coatday::input {

/// The id of a species that wood:: knows; spaces and underscores count as hyphens, capitals as small letters.
[[nodiscard]] Parsed<std::string> parse_species(std::string_view);
[[nodiscard]] Parsed<wood::RingAngle> parse_ring_angle(std::string_view);     ///< flat, quarter, 35 deg
[[nodiscard]] Parsed<MoistureContent> parse_moisture(std::string_view);       ///< 9.5 %; 3 to 30 %
[[nodiscard]] Parsed<MoistureContent> parse_moisture_band(std::string_view);  ///< 2 %; 0.5 to 6 %
[[nodiscard]] Parsed<std::vector<unsigned>> parse_months(std::string_view);   ///< nov-apr, jul: 1 to 12 each, in the order typed

}  // namespace coatday::input
