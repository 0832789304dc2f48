#include "quantity/parse.h"

#include <fmt/core.h>

#include <array>
#include <charconv>
#include <system_error>

#include "quantity/text_kind.h"
#include "quantity/text_scan.h"

namespace coatday {
namespace {

// What each quantity accepts. Conversions: NIST SP 811 (2008) appendix B and NIST Handbook 44 appendix C; the inch (25.4 mm), the pound
// (453.592 37 g) and the US gallon (231 cubic inches, 3.785 411 784 l) are exact. The limits only catch slips: no source.
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

constexpr std::array voc_units{Unit{"g/l"}, Unit{"g/L"}, Unit{"lb/gal", 453592370000, litre_per_gallon_e9}};

constexpr std::array density_units{Unit{"g/l"},        Unit{"g/L"},   Unit{"kg/l", 1000},
                                   Unit{"kg/L", 1000}, Unit{"kg/m3"}, Unit{"lb/gal", 453592370000, litre_per_gallon_e9}};

constexpr std::array airflow_units{Unit{"m3/h"},
                                   Unit{"m3/min", 60},
                                   Unit{"m3/s", 3600},
                                   Unit{"l/s", 36, 10},
                                   Unit{"L/s", 36, 10},
                                   Unit{"cfm", 169901079552, 1e11},
                                   Unit{"ft3/min", 169901079552, 1e11}};

constexpr std::array vapour_units{Unit{"m3/l"}, Unit{"m3/L"}, Unit{"l/l", 1, 1000}, Unit{"ft3/gal", 28316846.592, litre_per_gallon_e9}};

constexpr std::array room_units{Unit{"m3"}, Unit{"cu m"}, Unit{"ft3", 28316846592, 1e12}, Unit{"cu ft", 28316846592, 1e12}};

// A litre of water is a kilogram.
constexpr std::array water_units{
    Unit{"g/h", 1, 1000},        Unit{"kg/h"},         Unit{"l/h"},          Unit{"g/day", 1, 24'000},
    Unit{"kg/day", 1, 24},       Unit{"l/day", 1, 24}, Unit{"L/day", 1, 24}, Unit{"pt/day", litre_per_gallon_e9, 24 * 8e9},
    Unit{"lb/h", 453592370, 1e9}};

// The British thermal unit of the International Table, per hour: 0.293 071 1 W.
constexpr std::array power_units{Unit{"kW"}, Unit{"W", 1, 1000}, Unit{"BTU/h", 2930711, 1e10}, Unit{"Btu/h", 2930711, 1e10}};

constexpr Kind voc = between("a VOC content", "350 g/l or 2.9 lb/gal", voc_units, 0, 2000, "from 0 to 2000 g/l");
constexpr Kind density = above_zero("a density", "867 g/l, 0.87 kg/l or 7.2 lb/gal", density_units, 5000, "above 0 and up to 5000 g/l");
constexpr Kind airflow = above_zero("an airflow", "500 cfm, 850 m3/h or 240 l/s", airflow_units, 1e6, "above 0 and up to 1000000 m3/h");
constexpr Kind vapour =
    above_zero("the vapour of a liquid", "30.4 ft3/gal, 0.227 m3/l or 227 l/l", vapour_units, 2, "above 0 and up to 2 m3/l");
constexpr Kind room_volume = above_zero("the volume of a room", "150 m3 or 5000 ft3", room_units, 100'000, "above 0 and up to 100000 m3");
constexpr Kind water_rate =
    between("an amount of water over time", "100 g/h, 12 l/day or 25 pt/day", water_units, 0, 100, "from 0 to 100 kg/h");
constexpr Kind power = above_zero("a power", "5 kW, 1500 W or 17000 BTU/h", power_units, 1000, "above 0 and up to 1000 kW");

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
Parsed<GramsPerLitre> parse_voc(std::string_view typed) { return as<GramsPerLitre>(parse(typed, voc)); }
Parsed<GramsPerLitre> parse_density(std::string_view typed) { return as<GramsPerLitre>(parse(typed, density)); }
Parsed<CubicMetresPerHour> parse_airflow(std::string_view typed) { return as<CubicMetresPerHour>(parse(typed, airflow)); }
Parsed<CubicMetresPerLitre> parse_vapour(std::string_view typed) { return as<CubicMetresPerLitre>(parse(typed, vapour)); }
Parsed<CubicMetres> parse_room_volume(std::string_view typed) { return as<CubicMetres>(parse(typed, room_volume)); }
Parsed<KilogramsPerHour> parse_water_rate(std::string_view typed) { return as<KilogramsPerHour>(parse(typed, water_rate)); }
Parsed<Kilowatts> parse_power(std::string_view typed) { return as<Kilowatts>(parse(typed, power)); }

}  // namespace coatday
