#include "finish/vapour.h"

#include <algorithm>
#include <initializer_list>

namespace coatday::finish {
namespace {

const Solvent& most_air(std::initializer_list<std::string_view> ids) {
  const auto air_of_gram = [](const Solvent& s) { return dilution_air(s, federal_limit).value() / s.density.value(); };
  const Solvent* most = nullptr;
  for (const std::string_view id : ids) {
    const Solvent* one = solvent(id);
    if (most == nullptr || air_of_gram(*one) > air_of_gram(*most)) most = one;
  }
  return *most;
}

// What is usual in a base: judgement.
const Solvent& usual_solvent(Base base) {
  switch (base) {
    case Base::water:
      return most_air({"2-butoxyethanol", "2-ethoxyethanol"});
    case Base::alcohol:
      return most_air({"ethyl-alcohol", "methyl-alcohol", "isopropyl-alcohol"});
    case Base::lacquer_thinner:
      return most_air({"toluene", "o-xylene", "acetone", "methyl-ethyl-ketone", "n-butyl-acetate", "n-butyl-alcohol", "isopropyl-alcohol"});
    case Base::reactive:
      return most_air({"o-xylene", "toluene", "n-butyl-acetate", "methyl-ethyl-ketone", "vm-p-naphtha", "stoddard-solvent"});
    case Base::white_spirit:
    case Base::none:
      break;
  }
  return most_air({"vm-p-naphtha", "stoddard-solvent", "o-xylene"});
}

}  // namespace

const Solvent& solvent_of(const Product& product) { return product.solvent ? *product.solvent : usual_solvent(product.base); }

GramsPerLitre solvent_content(const Product& product) { return std::max(product.voc, product.solvent_content.value_or(GramsPerLitre(0))); }

Litres solvent_in(const Product& product, Litres from_can, double thinner_share) {
  const Litres in_product = from_can * solvent_content(product) / solvent_of(product).density;
  return product.base == Base::water ? in_product : in_product + from_can * thinner_share;
}

}  // namespace coatday::finish
