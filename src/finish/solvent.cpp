#include "finish/solvent.h"

#include <algorithm>
#include <array>
#include <vector>

namespace coatday::finish {
namespace {

struct SolventRow {
  const char* id;
  const char* name;
  double ft3_per_gallon;
  double limit_pct;
  double density;  // g/l at 20 °C
};

// clang-format off
constexpr std::array rows{
    SolventRow{"acetone", "acetone", 44.0, 2.6, 791},
    SolventRow{"isoamyl-acetate", "isoamyl acetate", 21.6, 1.0, 871},
    SolventRow{"isoamyl-alcohol", "isoamyl alcohol", 29.6, 1.2, 810},
    SolventRow{"n-butyl-acetate", "n-butyl acetate", 24.8, 1.7, 882},
    SolventRow{"n-butyl-alcohol", "n-butyl alcohol", 35.2, 1.4, 810},
    SolventRow{"2-butoxyethanol", "2-butoxyethanol", 24.8, 1.1, 901},
    SolventRow{"2-ethoxyethanol", "2-ethoxyethanol", 33.6, 1.8, 930},
    SolventRow{"2-ethoxyethyl-acetate", "2-ethoxyethyl acetate", 23.2, 1.7, 974},
    SolventRow{"cyclohexanone", "cyclohexanone", 31.2, 1.1, 948},
    SolventRow{"1-1-dichloroethylene", "1,1-dichloroethylene", 42.4, 5.9, 1213},
    SolventRow{"1-2-dichloroethylene", "1,2-dichloroethylene", 42.4, 9.7, 1270},
    SolventRow{"ethyl-acetate", "ethyl acetate", 32.8, 2.5, 900},
    SolventRow{"ethyl-alcohol", "ethyl alcohol", 55.2, 4.3, 789},
    SolventRow{"ethyl-lactate", "ethyl lactate", 28.0, 1.5, 1030},
    SolventRow{"methyl-acetate", "methyl acetate", 40.0, 3.1, 934},
    SolventRow{"methyl-alcohol", "methyl alcohol", 80.8, 7.3, 792},
    SolventRow{"2-methoxyethanol", "2-methoxyethanol", 40.8, 2.5, 965},
    SolventRow{"methyl-ethyl-ketone", "methyl ethyl ketone", 36.0, 1.8, 805},
    SolventRow{"methyl-n-propyl-ketone", "methyl n-propyl ketone", 30.4, 1.5, 809},
    SolventRow{"vm-p-naphtha", "naphtha (VM&P)", 22.4, 0.9, 750},
    SolventRow{"stoddard-solvent", "naphtha, 100 °F flash (Stoddard solvent)", 23.2, 1.0, 780},
    SolventRow{"n-propyl-acetate", "n-propyl acetate", 27.2, 2.8, 888},
    SolventRow{"isopropyl-acetate", "isopropyl acetate", 28.0, 1.1, 872},
    SolventRow{"n-propyl-alcohol", "n-propyl alcohol", 44.8, 2.1, 803},
    SolventRow{"isopropyl-alcohol", "isopropyl alcohol", 44.0, 2.0, 786},
    SolventRow{"toluene", "toluene", 30.4, 1.4, 867},
    SolventRow{"o-xylene", "o-xylene", 26.4, 1.0, 880},
};
// clang-format on

constexpr double m3_per_l_per_ft3_per_gallon = 0.028316846592 / 3.785411784;

}  // namespace

std::span<const Solvent> solvents() {
  static const std::vector<Solvent> all = [] {
    std::vector<Solvent> made;
    for (const SolventRow& row : rows) {
      made.push_back({row.id, row.name, CubicMetresPerLitre(row.ft3_per_gallon * m3_per_l_per_ft3_per_gallon), row.limit_pct / 100,
                      GramsPerLitre(row.density), "29 CFR 1910.94(c)(6)(ii) Table G-11, from memory; density from memory"});
    }
    return made;
  }();
  return all;
}

const Solvent* solvent(std::string_view id) {
  const auto all = solvents();
  const auto found = std::ranges::find(all, id, &Solvent::id);
  return found == all.end() ? nullptr : &*found;
}

CubicMetresPerLitre dilution_air(const Solvent& solvent, double share) {
  return solvent.vapour * ((1 - solvent.lower_limit) / (solvent.lower_limit * share));
}

}  // namespace coatday::finish
