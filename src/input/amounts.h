#pragma once
// Amounts and words as files hold them, beyond quantity/text.h. Each reads a whole text, or says what was expected.

#include <string>
#include <string_view>
#include <vector>

#include "climate/air.h"
#include "quantity/text.h"

namespace coatday::input {

/// The mistake of a parser: "expected hours such as 08:00-12:00, found 'noon'".
[[nodiscard]] tl::unexpected<std::string> wrong_value(std::string_view typed, std::string_view expected);

[[nodiscard]] std::string_view trim(std::string_view);
/// The trimmed pieces between the marks; at least one, which may be empty.
[[nodiscard]] std::vector<std::string_view> split(std::string_view text, std::string_view mark);

[[nodiscard]] Parsed<std::string> parse_name(std::string_view);           ///< one line, not empty, up to 200 characters
[[nodiscard]] Parsed<std::string> parse_note(std::string_view);           ///< line ends become spaces
[[nodiscard]] Parsed<int> parse_positive_count(std::string_view);         ///< 1 to 10 000
[[nodiscard]] Parsed<int> parse_coats(std::string_view);                  ///< 0 to 100
[[nodiscard]] Parsed<int> parse_set_aside(std::string_view);              ///< 0 to 10 000
[[nodiscard]] Parsed<double> parse_factor(std::string_view);              ///< 1 to 100
[[nodiscard]] Parsed<double> parse_explosive_limit(std::string_view);     ///< a fraction of the air, above 0 and up to 50 %
[[nodiscard]] Parsed<double> parse_vapour_limit(std::string_view);        ///< a share of the lower explosive limit, above 0 and up to 25 %
[[nodiscard]] Parsed<double> parse_air_movement(std::string_view);        ///< 0.5 to 2
[[nodiscard]] Parsed<double> parse_importance(std::string_view);          ///< above 0 and up to 1000
[[nodiscard]] Parsed<double> parse_parts(std::string_view);               ///< parts by volume, above 0 and up to 1000
[[nodiscard]] Parsed<double> parse_some_share(std::string_view);          ///< above 0 %
[[nodiscard]] Parsed<RelativeHumidity> parse_humidity(std::string_view);  ///< above 0 %: air without any water has no dew point
[[nodiscard]] Parsed<Celsius> parse_air_temperature(std::string_view);    ///< -40 to 60 °C
[[nodiscard]] Parsed<Kelvins> parse_margin(std::string_view);             ///< 0 K or more
[[nodiscard]] Parsed<climate::Air> parse_air(std::string_view);           ///< 70 °F 50 %
[[nodiscard]] Parsed<KilojoulesPerMole> parse_activation(std::string_view);  ///< 55 kJ/mol
[[nodiscard]] Parsed<Money> parse_price(std::string_view);                   ///< 0 or more
[[nodiscard]] Parsed<Hours> parse_fire_watch(std::string_view);              ///< half an hour or more
[[nodiscard]] Parsed<Hours> parse_some_time(std::string_view);               ///< a duration above 0
[[nodiscard]] Parsed<Minutes> parse_minutes(std::string_view);               ///< a duration, in whole minutes, rounded up
[[nodiscard]] Parsed<Metres> parse_distance(std::string_view);               ///< a length that may be 0
[[nodiscard]] Parsed<SquareMetres> parse_rectangle(std::string_view);        ///< 1/2 in x 8 in

}  // namespace coatday::input
