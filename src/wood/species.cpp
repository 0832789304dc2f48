#include "wood/species.h"

#include <algorithm>
#include <array>

#include "wood/species_table.h"

namespace coatday::wood {
namespace {

/// What the trade calls a species, where that is not the handbook's name in one order or the other. Common practice, no source.
struct TradeName {
  std::string_view name;
  std::string_view id;
};
constexpr std::array trade_names{
    TradeName{"alder", "alder-red"},
    TradeName{"ash", "ash-white"},
    TradeName{"aspen", "aspen-quaking"},
    TradeName{"basswood", "basswood-american"},
    TradeName{"beech", "beech-american"},
    TradeName{"birch", "birch-yellow"},
    TradeName{"cherry", "cherry-black"},
    TradeName{"chestnut", "chestnut-american"},
    TradeName{"cypress", "baldcypress"},
    TradeName{"douglas-fir", "douglas-fir-coast"},
    TradeName{"eastern-redcedar", "cedar-eastern-redcedar"},
    TradeName{"hard-maple", "maple-sugar"},
    TradeName{"hickory", "hickory-true"},
    TradeName{"mahogany", "mahogany-true"},
    TradeName{"oak-red", "oak-red-commercial"},
    TradeName{"oak-white", "oak-white-commercial"},
    TradeName{"pecan", "hickory-pecan"},
    TradeName{"poplar", "yellow-poplar"},
    TradeName{"red-oak", "oak-red-commercial"},
    TradeName{"soft-maple", "maple-red"},
    TradeName{"sycamore", "sycamore-american"},
    TradeName{"walnut", "walnut-black"},
    TradeName{"western-redcedar", "cedar-western-redcedar"},
    TradeName{"white-oak", "oak-white-commercial"},
    TradeName{"white-pine", "pine-eastern-white"},
};

/// "black-walnut" for "Walnut, black". The id keeps the comma's place.
bool is_natural_order(const Species& species, std::string_view typed) {
  const auto comma = species.name.find(',');
  if (comma == std::string_view::npos || typed.size() != species.id.size()) return false;
  const auto genus = species.id.substr(0, comma), kind = species.id.substr(comma + 1);
  return typed.substr(0, kind.size()) == kind && typed[kind.size()] == '-' && typed.substr(kind.size() + 1) == genus;
}

}  // namespace

std::span<const Species> all_species() { return species_table; }

const Species* find_species(std::string_view id) {
  const auto trade = std::find_if(trade_names.begin(), trade_names.end(), [id](const TradeName& t) { return t.name == id; });
  const auto wanted = trade == trade_names.end() ? id : trade->id;
  const auto found = std::find_if(species_table.begin(), species_table.end(),
                                  [wanted](const Species& s) { return s.id == wanted || is_natural_order(s, wanted); });
  return found == species_table.end() ? nullptr : &*found;
}

std::vector<std::string> species_names() {
  std::vector<std::string> names;
  for (const TradeName& trade : trade_names) names.emplace_back(trade.name);
  for (const Species& species : species_table) {
    names.emplace_back(species.id);
    const auto comma = species.name.find(',');
    if (comma == std::string_view::npos) continue;
    const std::string natural = std::string(species.id.substr(comma + 1)) + "-" + std::string(species.id.substr(0, comma));
    if (find_species(natural) != nullptr) names.push_back(natural);
  }
  return names;
}

}  // namespace coatday::wood
