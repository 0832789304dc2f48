#pragma once
// Why no schedule exists.

#include <optional>

#include "solver/base/bounds.h"
#include "solver/base/result.h"

namespace coatday::solver {

/// A required activity or hold that asks for more than there is.
[[nodiscard]] std::optional<Contradiction> over_capacity(const Network&);

/// From bounds that crossed: the tags on the way there, less those that can be left out and the bounds still cross. Tries them one by one
/// until a fixed amount of work is spent.
[[nodiscard]] Contradiction explain(const Network&, const Bounds& crossed);

}  // namespace coatday::solver
