#pragma once
// How much more of something is worth having, found in few tries.

#include <functional>
#include <optional>
#include <vector>

#include "quantity/instant.h"

namespace coatday::planner {

/// What so many more gain; nothing where that could not be found out.
using GainOf = std::function<std::optional<Hours>(int more)>;

/// The smallest number with which `least` is gained; and the smallest beyond which nothing more is, where that gains `least` again. It asks for
/// the largest first: where that gains nothing, less does not. Then it doubles up to `most` and halves what lies between, eight numbers at most.
[[nodiscard]] std::vector<int> worth_having(int most, Hours least, const GainOf&);

}  // namespace coatday::planner
