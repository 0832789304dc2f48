#pragma once
// Quantities from text. Every parser uses the whole text, needs a unit, refuses what is not finite, and on failure returns one sentence part
// that completes "…: error: ", such as "'68' has no unit; expected a length such as 68 in, 5 ft 8 in, 170 cm or 38 mm".

#include <string>
#include <string_view>

#include <tl/expected.hpp>

#include "quantity/quantity.h"
#include "quantity/time.h"

namespace coatday {

template <class T>
using Parsed = tl::expected<T, std::string>;

[[nodiscard]] Parsed<double> parse_number(std::string_view);      ///< plain decimal, no unit, finite
[[nodiscard]] Parsed<int> parse_count(std::string_view);          ///< whole number >= 0, no octal, no sign
[[nodiscard]] Parsed<double> parse_share(std::string_view);       ///< "65 %" or "0.65" -> 0.65; 0 to 1
[[nodiscard]] Parsed<Metres> parse_length(std::string_view);      ///< 2 1/8 in, 2-1/8", 5 ft 8 in, 5' 8", 68 in, 170 cm, 38 mm, 1.2 m; > 0
[[nodiscard]] Parsed<SquareMetres> parse_area(std::string_view);  ///< 0.8 m2, m², 900 cm2, 4 ft2, sq ft, 20 in2; > 0
[[nodiscard]] Parsed<Litres> parse_volume(std::string_view);      ///< 250 ml, 1 l, 1 gal, 1 qt, 1 pt, 8 fl oz (US); > 0
[[nodiscard]] Parsed<SquareMetresPerLitre> parse_spreading_rate(std::string_view);  ///< 10 m2/l, 400 ft2/gal; > 0
[[nodiscard]] Parsed<SquareMetresPerHour> parse_work_rate(std::string_view);        ///< 6 m2/h, 60 ft2/h; > 0
[[nodiscard]] Parsed<Micrometres> parse_film(std::string_view);                     ///< 40 um, µm, 1.5 mil; > 0
[[nodiscard]] Parsed<GramsPerLitre> parse_voc(std::string_view);                    ///< 350 g/l, 2.9 lb/gal; >= 0
[[nodiscard]] Parsed<GramsPerLitre> parse_density(std::string_view);                ///< 867 g/l, 0.87 kg/l, 7.2 lb/gal; > 0
[[nodiscard]] Parsed<CubicMetresPerHour> parse_airflow(std::string_view);           ///< 850 m3/h, 240 l/s, 500 cfm; > 0
[[nodiscard]] Parsed<CubicMetresPerLitre> parse_vapour(std::string_view);           ///< 30.4 ft3/gal, 0.227 m3/l, of a liquid; > 0
[[nodiscard]] Parsed<CubicMetres> parse_room_volume(std::string_view);              ///< 150 m3, m³, 5000 ft3, cu ft; > 0
[[nodiscard]] Parsed<KilogramsPerHour> parse_water_rate(std::string_view);          ///< 100 g/h, 12 l/day, 25 pt/day (US); >= 0
[[nodiscard]] Parsed<Kilowatts> parse_power(std::string_view);                      ///< 5 kW, 5000 W, 17000 BTU/h; > 0
[[nodiscard]] Parsed<Celsius> parse_temperature(std::string_view);                  ///< 18 °C, 18 C, 65 °F, 65 F
[[nodiscard]] Parsed<Kelvins> parse_temperature_difference(std::string_view);       ///< 3 K, 5 °F
[[nodiscard]] Parsed<Hours> parse_duration(std::string_view);                       ///< 2 h 30 min, 90 min, 3 days, 2 weeks; >= 0

}  // namespace coatday
