#include <array>

#include "wood/film.h"

namespace coatday::wood {
namespace {

constexpr Verification compared = Verification::compared, partly = Verification::partly_compared, memory = Verification::from_memory;
constexpr int none = unknown_exclusion;

// Names as in the table. Compared with a page copy of FPL-GTR-190; where that has no row, with magazine and forum quotations of one or two coats.
// The third coat of nitrocellulose lacquer is quoted with 10 % on the 14th day and remembered with 79, 37 and 19 %.
// clang-format off
constexpr std::array rows{
    Exclusion{"Linseed oil", 1, {12, 0, 0}, compared},
    Exclusion{"Linseed oil", 2, {22, 0, 0}, compared},
    Exclusion{"Linseed oil", 3, {33, 2, 0}, compared},
    Exclusion{"Water repellent", 1, {12, 0, 0}, compared},
    Exclusion{"Water repellent", 2, {46, 2, 0}, compared},
    Exclusion{"Water repellent", 3, {78, 27, 11}, compared},
    Exclusion{"Latex flat wall paint (vinyl acrylic resin)", 1, {5, 0, 0}, compared},
    Exclusion{"Latex flat wall paint (vinyl acrylic resin)", 2, {11, 0, 0}, compared},
    Exclusion{"Latex flat wall paint (vinyl acrylic resin)", 3, {22, 0, 0}, compared},
    Exclusion{"Latex primer wall paint (butadiene-styrene resin)", 1, {78, 37, 20}, compared},
    Exclusion{"Latex primer wall paint (butadiene-styrene resin)", 2, {86, 47, 27}, compared},
    Exclusion{"Latex primer wall paint (butadiene-styrene resin)", 3, {88, 55, 33}, compared},
    Exclusion{"Alkyd flat wall paint (soya alkyd)", 1, {9, 1, 0}, compared},
    Exclusion{"Alkyd flat wall paint (soya alkyd)", 2, {21, 2, 0}, compared},
    Exclusion{"Alkyd flat wall paint (soya alkyd)", 3, {37, 5, 0}, compared},
    Exclusion{"Acrylic latex house primer paint", 1, {43, 6, 1}, compared},
    Exclusion{"Acrylic latex house primer paint", 2, {66, 14, 2}, compared},
    Exclusion{"Acrylic latex house primer paint", 3, {72, 20, 4}, compared},
    Exclusion{"Acrylic latex flat house paint", 1, {52, 12, 5}, compared},
    Exclusion{"Acrylic latex flat house paint", 2, {77, 28, 11}, compared},
    Exclusion{"Acrylic latex flat house paint", 3, {84, 39, 16}, compared},
    Exclusion{"Solid-color latex stain (acrylic resin)", 1, {5, 0, 0}, compared},
    Exclusion{"Solid-color latex stain (acrylic resin)", 2, {38, 4, 0}, compared},
    Exclusion{"Solid-color latex stain (acrylic resin)", 3, {50, 6, 0}, compared},
    Exclusion{"Solid-color oil-based stain (linseed oil)", 1, {45, 7, 1}, compared},
    Exclusion{"Solid-color oil-based stain (linseed oil)", 2, {84, 48, 26}, compared},
    Exclusion{"Solid-color oil-based stain (linseed oil)", 3, {90, 64, 42}, compared},
    Exclusion{"Semitransparent oil-based stain (commercial)", 1, {7, 0, 0}, compared},
    Exclusion{"Semitransparent oil-based stain (commercial)", 2, {13, 0, 0}, compared},
    Exclusion{"Semitransparent oil-based stain (commercial)", 3, {21, 1, 0}, compared},
    Exclusion{"Alkyd house primer paint (maleic-alkyd resin)", 1, {85, 46, 24}, compared},
    Exclusion{"Alkyd house primer paint (maleic-alkyd resin)", 2, {93, 70, 49}, compared},
    Exclusion{"Alkyd house primer paint (maleic-alkyd resin)", 3, {95, 78, 60}, compared},
    Exclusion{"Urethane varnish (oil-modified)", 1, {55, 10, 2}, compared},
    Exclusion{"Urethane varnish (oil-modified)", 2, {83, 43, 23}, compared},
    Exclusion{"Urethane varnish (oil-modified)", 3, {90, 64, 44}, compared},
    Exclusion{"Urethane varnish (oil-modified)", 4, {91, 68, 51}, compared},
    Exclusion{"Urethane varnish (oil-modified)", 5, {93, 72, 57}, compared},
    Exclusion{"Urethane varnish (oil-modified)", 6, {93, 76, 62}, compared},
    Exclusion{"Polyurethane paint, gloss (two components)", 1, {91, 66, 44}, compared},
    Exclusion{"Polyurethane paint, gloss (two components)", 2, {94, 79, 62}, compared},
    Exclusion{"Polyurethane paint, gloss (two components)", 3, {96, 86, 74}, compared},
    Exclusion{"Tung oil", 2, {46, 2, 0}, compared},
    Exclusion{"Nitrocellulose lacquer", 1, {40, 4, 1}, memory},
    Exclusion{"Nitrocellulose lacquer", 2, {70, 22, 8}, compared},
    Exclusion{"Nitrocellulose lacquer", 3, {none, none, 10}, Verification::conflicting},
    Exclusion{"Shellac", 1, {65, 10, 3}, memory},
    Exclusion{"Shellac", 2, {84, 43, 20}, compared},
    Exclusion{"Shellac", 3, {91, 64, 42}, partly},
    Exclusion{"Shellac", 4, {93, 75, 58}, memory},
    Exclusion{"Shellac", 5, {94, 81, 67}, memory},
    Exclusion{"Shellac", 6, {95, 85, 73}, memory},
    Exclusion{"Spar varnish (soya alkyd)", 1, {46, 6, 0}, memory},
    Exclusion{"Spar varnish (soya alkyd)", 2, {80, 36, 15}, compared},
    Exclusion{"Spar varnish (soya alkyd)", 3, {87, 53, 30}, partly},
    Exclusion{"Enamel paint, gloss (soya alkyd; interior)", 2, {91, 64, 43}, compared},
    Exclusion{"Enamel paint, gloss (soya alkyd; interior)", 3, {none, none, 59}, compared},
    Exclusion{"Polyurethane finish, clear (two components)", 1, {48, 6, 0}, memory},
    Exclusion{"Polyurethane finish, clear (two components)", 2, {90, 66, 46}, compared},
    Exclusion{"Polyurethane finish, clear (two components)", 3, {94, 81, 66}, partly},
    Exclusion{"Epoxy finish, clear (two components)", 2, {98, 93, 88}, compared},
    Exclusion{"Epoxy finish, clear (two components)", 3, {none, none, 91}, compared},
    Exclusion{"Paraffin wax, brushed", 1, {97, 82, 69}, partly},
    Exclusion{"Paraffin wax, dipped", 1, {100, 97, 95}, partly},
    Exclusion{"Furniture paste wax", 1, {6, 0, 0}, memory},
    Exclusion{"Furniture paste wax", 2, {11, 0, 0}, memory},
    Exclusion{"Furniture paste wax", 3, {none, none, 0}, compared},
    Exclusion{"Enamel paint, satin (soya/tung/alkyd)", 1, {93, 69, 50}, memory},
    Exclusion{"Enamel paint, satin (soya/tung/alkyd)", 3, {97, 86, 80}, memory},
    Exclusion{"Floor seal (phenolic resin/tung oil)", 1, {31, 1, 0}, memory},
    Exclusion{"Floor seal (phenolic resin/tung oil)", 3, {88, 56, 35}, memory},
    Exclusion{"Floor and deck enamel (phenolic alkyd)", 1, {80, 31, 18}, memory},
    Exclusion{"Floor and deck enamel (phenolic alkyd)", 3, {92, 63, 46}, memory},
};
// clang-format on

}  // namespace

std::span<const Exclusion> exclusion_table() { return rows; }

}  // namespace coatday::wood
