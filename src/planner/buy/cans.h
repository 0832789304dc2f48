#pragma once
// Which cans to buy.

#include <optional>
#include <span>
#include <vector>

#include "finish/product.h"

namespace coatday::planner {

struct Cover {
  std::vector<int> counts;  ///< of each can, in the order given
  Litres total;
  std::optional<Money> cost;  ///< where every can bought has a price
};

/// Whole cans that hold at least `need`: the cheapest; of equals those that leave least over; of equals the fewest. When any can has no
/// price, what is left over decides alone, then the number of cans. Exact up to 200 l; what a need has above that is taken in whole cans of
/// the best value. No cans, or no need: nothing.
[[nodiscard]] Cover best_cover(std::span<const finish::Can> cans, Litres need);

}  // namespace coatday::planner
