#pragma once
// What files and the command line say of wood.

#include <filesystem>
#include <string>
#include <string_view>

#include "input/order_file.h"
#include "wood/movement.h"

namespace coatday::input {

/// The id of a species that wood:: knows; spaces and underscores count as hyphens, capitals as small letters.
[[nodiscard]] Parsed<std::string> parse_species(std::string_view);
[[nodiscard]] Parsed<wood::RingAngle> parse_ring_angle(std::string_view);     ///< flat, quarter, 35 deg
[[nodiscard]] Parsed<MoistureContent> parse_moisture(std::string_view);       ///< 9.5 %; 3 to 30 %
[[nodiscard]] Parsed<MoistureContent> parse_moisture_band(std::string_view);  ///< 2 %; 0.5 to 6 %
[[nodiscard]] Parsed<std::vector<unsigned>> parse_months(std::string_view);   ///< nov-apr, jul: 1 to 12 each, in the order typed

/// Readings of a moisture meter under the key 'moisture': one text, or a list of maps.
[[nodiscard]] std::vector<piece::MeterReading> read_moisture(const Fields&, const Surroundings&, Mistakes&);

/// A part's own keys about its wood, once its shape and its species are known.
void read_wood(const Fields&, const Common&, piece::Part&, Mistakes&);

/// The key 'customer room': the air where the order will live. Empty where it is not given, or after a mistake.
[[nodiscard]] job::AirMaker read_customer_room(const Fields& order, const std::filesystem::path& file, const Surroundings&, Mistakes&);

}  // namespace coatday::input
