#include "input/wood.h"

#include <vector>

#include "input/mistakes.h"
#include "wood/species.h"

namespace coatday::input {

Parsed<std::string> parse_species(std::string_view typed) {
  const wood::Species* found = wood::find_species(typed);
  if (found != nullptr) return std::string(found->id);
  std::vector<std::string> known;
  for (const wood::Species& species : wood::all_species()) {
    const std::string_view genus = species.id.substr(0, species.id.find('-'));
    if (wood::find_species(genus) != nullptr) known.emplace_back(genus);  // its plain trade name: walnut, cherry
    known.emplace_back(species.id);
  }
  return tl::make_unexpected(unknown("species", typed, known));
}

}  // namespace coatday::input
