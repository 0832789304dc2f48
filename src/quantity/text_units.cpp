// What each quantity accepts. Conversions: NIST SP 811 (2008) appendix B and NIST Handbook 44 appendix C; the inch (25.4 mm), the pound
// (453.592 37 g) and the US gallon (231 cubic inches, 3.785 411 784 l) are exact. The limits only catch slips: no source.
#include <fmt/core.h>

#include <array>
#include <charconv>
#include <system_error>

#include "quantity/text_scan.h"

namespace coatday {
namespace {

using text::above_zero;
using text::as;
using text::between;
using text::chained;
using text::Kind;
using text::litre_per_gallon_e9;
using text::parse;
using text::Unit;

constexpr std::array length_units{
    Unit{"mm", 1, 1000},       Unit{"cm", 1, 100},       Unit{"m"},
    Unit{"in", 254, 10000},    Unit{"inch", 254, 10000}, Unit{"inches", 254, 10000},
    Unit{"\"", 254, 10000},    Unit{"ft", 3048, 10000},  Unit{"foot", 3048, 10000},
    Unit{"feet", 3048, 10000}, Unit{"'", 3048, 10000},
};

constexpr std::array area_units{
    Unit{"m2"},
    Unit{"sq m"},
    Unit{"cm2", 1, 1e4},
    Unit{"mm2", 1, 1e6},
    Unit{"ft2", 9290304, 1e8},
    Unit{"sq ft", 9290304, 1e8},
    Unit{"in2", 64516, 1e8},
    Unit{"sq in", 64516, 1e8},
};

constexpr std::array volume_units{
    Unit{"l"},
    Unit{"L"},
    Unit{"litre"},
    Unit{"litres"},
    Unit{"ml", 1, 1000},
    Unit{"mL", 1, 1000},
    Unit{"gal", litre_per_gallon_e9, 1e9},
    Unit{"gallon", litre_per_gallon_e9, 1e9},
    Unit{"gallons", litre_per_gallon_e9, 1e9},
    Unit{"qt", litre_per_gallon_e9, 4e9},
    Unit{"quart", litre_per_gallon_e9, 4e9},
    Unit{"quarts", litre_per_gallon_e9, 4e9},
    Unit{"pt", litre_per_gallon_e9, 8e9},
    Unit{"pint", litre_per_gallon_e9, 8e9},
    Unit{"pints", litre_per_gallon_e9, 8e9},
    Unit{"fl oz", litre_per_gallon_e9, 128e9},
};

constexpr std::array spreading_units{Unit{"m2/l"}, Unit{"m2/L"}, Unit{"ft2/gal", 92903040, litre_per_gallon_e9},
                                     Unit{"sq ft/gal", 92903040, litre_per_gallon_e9}};

constexpr std::array work_units{Unit{"m2/h"}, Unit{"ft2/h", 9290304, 1e8}, Unit{"sq ft/h", 9290304, 1e8}};

constexpr std::array film_units{Unit{"um"}, Unit{"mil", 254, 10}, Unit{"mils", 254, 10}};

constexpr std::array temperature_units{Unit{"°C"}, Unit{"C"}, Unit{"°F", 5, 9, 32}, Unit{"F", 5, 9, 32}};

constexpr std::array difference_units{Unit{"K"}, Unit{"°C"}, Unit{"C"}, Unit{"°F", 5, 9}, Unit{"F", 5, 9}};

constexpr std::array duration_units{
    Unit{"s", 1, 3600},
    Unit{"second", 1, 3600},
    Unit{"seconds", 1, 3600},
    Unit{"min", 1, 60},
    Unit{"minute", 1, 60},
    Unit{"minutes", 1, 60},
    Unit{"h"},
    Unit{"hour"},
    Unit{"hours"},
    Unit{"d", 24},
    Unit{"day", 24},
    Unit{"days", 24},
    Unit{"week", 168},
    Unit{"weeks", 168},
};

constexpr Kind length = chained(above_zero("a length", "68 in, 5 ft 8 in, 170 cm or 38 mm", length_units, 100, "above 0 and up to 100 m"));
constexpr Kind area = above_zero("an area", "0.8 m2, 900 cm2, 4 ft2 or 20 in2", area_units, 10'000, "above 0 and up to 10000 m2");
constexpr Kind volume = above_zero("a volume", "250 ml, 1 l, 8 fl oz, 1 qt or 1 gal", volume_units, 10'000, "above 0 and up to 10000 l");
constexpr Kind spreading_rate =
    above_zero("a spreading rate", "10 m2/l or 400 ft2/gal", spreading_units, 1000, "above 0 and up to 1000 m2/l");
constexpr Kind work_rate = above_zero("a work rate", "6 m2/h or 60 ft2/h", work_units, 1000, "above 0 and up to 1000 m2/h");
constexpr Kind film = above_zero("a film thickness", "40 um or 1.5 mil", film_units, 10'000, "above 0 and up to 10000 um");
constexpr Kind temperature = between("a temperature", "18 °C or 65 °F", temperature_units, -60, 400, "from -60 °C to 400 °C");
constexpr Kind temperature_difference =
    between("a difference of temperature", "3 K or 5 °F", difference_units, -100, 100, "from -100 K to 100 K");
constexpr Kind duration =
    chained(between("a duration", "90 min, 2 h 30 min, 3 days or 2 weeks", duration_units, 0, 2 * 366 * 24, "from 0 to 2 years"));

Parsed<double> whole_text(std::string_view typed, std::string_view expected) {
  const std::string plain = text::plain(typed);
  const auto amount = text::read_amount(plain);
  const bool fraction = plain.find('/') != std::string::npos;
  if (amount && amount->rest.empty() && !fraction) return amount->value + 0.0;
  return tl::make_unexpected(fmt::format("{} is not a number; expected {}", text::quoted(typed), expected));
}

}  // namespace

Parsed<double> parse_number(std::string_view typed) { return whole_text(typed, "a plain number such as 12 or 0.5"); }

Parsed<int> parse_count(std::string_view typed) {
  const std::string plain = text::plain(typed);
  int value = 0;
  const auto [end, error] = std::from_chars(plain.data(), plain.data() + plain.size(), value);
  const bool used = error == std::errc() && end == plain.data() + plain.size() && plain.front() != '-';
  if (used && value <= 1'000'000) return value;
  return tl::make_unexpected(fmt::format("{} is not a count; expected a whole number such as 3, up to 1000000", text::quoted(typed)));
}

Parsed<double> parse_share(std::string_view typed) {
  constexpr std::string_view expected = "a share such as 65 % or 0.65";
  std::string plain = text::plain(typed);
  const bool percent = plain.ends_with('%');
  if (percent) plain.pop_back();
  const auto number = whole_text(plain, expected);
  if (!number) return tl::make_unexpected(fmt::format("{} is not a share; expected {}", text::quoted(typed), expected));
  const double share = percent ? *number / 100 : *number;
  if (share >= 0 && share <= 1) return share;
  return tl::make_unexpected(fmt::format("{} is not between 0 % and 100 %; expected {}", text::quoted(typed), expected));
}

Parsed<Metres> parse_length(std::string_view typed) { return as<Metres>(parse(typed, length)); }
Parsed<SquareMetres> parse_area(std::string_view typed) { return as<SquareMetres>(parse(typed, area)); }
Parsed<Litres> parse_volume(std::string_view typed) { return as<Litres>(parse(typed, volume)); }
Parsed<SquareMetresPerLitre> parse_spreading_rate(std::string_view typed) { return as<SquareMetresPerLitre>(parse(typed, spreading_rate)); }
Parsed<SquareMetresPerHour> parse_work_rate(std::string_view typed) { return as<SquareMetresPerHour>(parse(typed, work_rate)); }
Parsed<Micrometres> parse_film(std::string_view typed) { return as<Micrometres>(parse(typed, film)); }
Parsed<Celsius> parse_temperature(std::string_view typed) { return as<Celsius>(parse(typed, temperature)); }
Parsed<Kelvins> parse_temperature_difference(std::string_view typed) { return as<Kelvins>(parse(typed, temperature_difference)); }
Parsed<Hours> parse_duration(std::string_view typed) { return as<Hours>(parse(typed, duration)); }

}  // namespace coatday
