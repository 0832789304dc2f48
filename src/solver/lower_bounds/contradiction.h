#pragma once
// Why no schedule exists, by bounds alone.

#include <optional>

#include "solver/base/bounds.h"
#include "solver/base/result.h"

namespace coatday::solver {

/// Finds a certain activity or hold that demands more than there is.
[[nodiscard]] std::optional<Contradiction> over_capacity(const Network&);

/// Tags that make the bounds cross. Starts from the reasons of the crossing and leaves out tags while the bounds still cross, until a fixed
/// amount of work is done.
[[nodiscard]] Contradiction explain(const Network&, const Bounds& crossed);

}  // namespace coatday::solver
