// What the quantities of a shop's room and of what is given off in it accept. Conversions and limits as in text_units.cpp.
#include <array>

#include "quantity/text_scan.h"

namespace coatday {
namespace {

using text::as;
using text::Kind;
using text::litre_per_gallon_e9;
using text::Low;
using text::parse;
using text::Unit;

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

}  // namespace

Parsed<GramsPerLitre> parse_voc(std::string_view typed) {
  constexpr Kind kind{
      .name = "a VOC content", .example = "350 g/l or 2.9 lb/gal", .units = voc_units, .high = 2000, .range = "from 0 to 2000 g/l"};
  return as<GramsPerLitre>(parse(typed, kind));
}

Parsed<GramsPerLitre> parse_density(std::string_view typed) {
  constexpr Kind kind{.name = "a density",
                      .example = "867 g/l, 0.87 kg/l or 7.2 lb/gal",
                      .units = density_units,
                      .high = 5000,
                      .bound = Low::excluded,
                      .range = "above 0 and up to 5000 g/l"};
  return as<GramsPerLitre>(parse(typed, kind));
}

Parsed<CubicMetresPerHour> parse_airflow(std::string_view typed) {
  constexpr Kind kind{.name = "an airflow",
                      .example = "500 cfm, 850 m3/h or 240 l/s",
                      .units = airflow_units,
                      .high = 1e6,
                      .bound = Low::excluded,
                      .range = "above 0 and up to 1000000 m3/h"};
  return as<CubicMetresPerHour>(parse(typed, kind));
}

Parsed<CubicMetresPerLitre> parse_vapour(std::string_view typed) {
  constexpr Kind kind{.name = "the vapour of a liquid",
                      .example = "30.4 ft3/gal, 0.227 m3/l or 227 l/l",
                      .units = vapour_units,
                      .high = 2,
                      .bound = Low::excluded,
                      .range = "above 0 and up to 2 m3/l"};
  return as<CubicMetresPerLitre>(parse(typed, kind));
}

Parsed<CubicMetres> parse_room_volume(std::string_view typed) {
  constexpr Kind kind{.name = "the volume of a room",
                      .example = "150 m3 or 5000 ft3",
                      .units = room_units,
                      .high = 100'000,
                      .bound = Low::excluded,
                      .range = "above 0 and up to 100000 m3"};
  return as<CubicMetres>(parse(typed, kind));
}

Parsed<KilogramsPerHour> parse_water_rate(std::string_view typed) {
  constexpr Kind kind{.name = "an amount of water over time",
                      .example = "100 g/h, 12 l/day or 25 pt/day",
                      .units = water_units,
                      .high = 100,
                      .range = "from 0 to 100 kg/h"};
  return as<KilogramsPerHour>(parse(typed, kind));
}

Parsed<Kilowatts> parse_power(std::string_view typed) {
  constexpr Kind kind{.name = "a power",
                      .example = "5 kW, 1500 W or 17000 BTU/h",
                      .units = power_units,
                      .high = 1000,
                      .bound = Low::excluded,
                      .range = "above 0 and up to 1000 kW"};
  return as<Kilowatts>(parse(typed, kind));
}

}  // namespace coatday
