#pragma once
// Hands-on time.

#include <optional>

#include "finish/schedule.h"
#include "planner/tasks/tasks.h"
#include "shop/shop.h"

namespace coatday::planner {

struct Effort {
  Minutes hands_on{0};  ///< on the grid
  Minutes set_up{0};    ///< with the induction of two-part mixes
  Minutes clean_up{0};
  int mixes = 0;  ///< of a product with a pot life
};

/// A scuff that no schedule describes: it makes a missed recoat window of the coat below good.
[[nodiscard]] finish::Step scuff_step(const finish::Step& coat);

/// The method of a step: its own, else the first of the shop's that the product takes.
[[nodiscard]] std::optional<finish::Method> method_of(const finish::Step&, const finish::Product&, const shop::Shop&);

/// As the record has it, in reference air.
[[nodiscard]] Mixing as_recorded(const finish::Product&);
/// One coat over an area. Its time is area / work rate and handling, but at least so long, and the standing time before wiping. The pot life
/// gives the number of mixes.
[[nodiscard]] Effort coat_effort(const finish::Product&, finish::Method, SquareMetres, int items, const shop::Shop&, const Mixing&,
                                 Hours at_least = Hours(0));
/// Dry work: by area, or a fixed time per item, or the sum of a bake's stages.
[[nodiscard]] Effort dry_effort(const finish::Step&, SquareMetres, int items, const shop::Shop&);

}  // namespace coatday::planner
