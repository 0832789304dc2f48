#include "wood/fixing.h"

#include <algorithm>

namespace coatday::wood {

tl::expected<Play, std::string> play(const Fixing& fixing, double coefficient, const Season& season) {
  const auto towards = movement(fixing.from_fixed_point, coefficient, season.fixed, season.driest);
  if (!towards) return tl::make_unexpected(towards.error());
  const auto away = movement(fixing.from_fixed_point, coefficient, season.fixed, season.dampest);
  if (!away) return tl::make_unexpected(away.error());
  const auto [least, most] = std::minmax({*towards, *away, Metres(0)});
  return Play{least * -1, most, (fixing.opening - fixing.shank) / 2};
}

tl::expected<Metres, std::string> opening_needed(const Fixing& fixing, double coefficient, const Season& season) {
  return play(fixing, coefficient, season).map([&fixing](const Play& p) { return fixing.shank + p.needed() * 2; });
}

}  // namespace coatday::wood
