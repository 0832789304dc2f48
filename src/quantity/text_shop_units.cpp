// What the quantities of a shop's room and of what is given off in it accept. Conversions and limits as in text_units.cpp.
#include <array>

#include "quantity/text_scan.h"

namespace coatday {
namespace {

using text::above_zero;
using text::as;
using text::between;
using text::Kind;
using text::litre_per_gallon_e9;
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

constexpr Kind voc = between("a VOC content", "350 g/l or 2.9 lb/gal", voc_units, 0, 2000, "from 0 to 2000 g/l");
constexpr Kind density = above_zero("a density", "867 g/l, 0.87 kg/l or 7.2 lb/gal", density_units, 5000, "above 0 and up to 5000 g/l");
constexpr Kind airflow = above_zero("an airflow", "500 cfm, 850 m3/h or 240 l/s", airflow_units, 1e6, "above 0 and up to 1000000 m3/h");
constexpr Kind vapour =
    above_zero("the vapour of a liquid", "30.4 ft3/gal, 0.227 m3/l or 227 l/l", vapour_units, 2, "above 0 and up to 2 m3/l");
constexpr Kind room_volume = above_zero("the volume of a room", "150 m3 or 5000 ft3", room_units, 100'000, "above 0 and up to 100000 m3");
constexpr Kind water_rate =
    between("an amount of water over time", "100 g/h, 12 l/day or 25 pt/day", water_units, 0, 100, "from 0 to 100 kg/h");
constexpr Kind power = above_zero("a power", "5 kW, 1500 W or 17000 BTU/h", power_units, 1000, "above 0 and up to 1000 kW");

}  // namespace

Parsed<GramsPerLitre> parse_voc(std::string_view typed) { return as<GramsPerLitre>(parse(typed, voc)); }
Parsed<GramsPerLitre> parse_density(std::string_view typed) { return as<GramsPerLitre>(parse(typed, density)); }
Parsed<CubicMetresPerHour> parse_airflow(std::string_view typed) { return as<CubicMetresPerHour>(parse(typed, airflow)); }
Parsed<CubicMetresPerLitre> parse_vapour(std::string_view typed) { return as<CubicMetresPerLitre>(parse(typed, vapour)); }
Parsed<CubicMetres> parse_room_volume(std::string_view typed) { return as<CubicMetres>(parse(typed, room_volume)); }
Parsed<KilogramsPerHour> parse_water_rate(std::string_view typed) { return as<KilogramsPerHour>(parse(typed, water_rate)); }
Parsed<Kilowatts> parse_power(std::string_view typed) { return as<Kilowatts>(parse(typed, power)); }

}  // namespace coatday
