#pragma once
// Very small problems with every feature on or off.

#include <cstdint>

#include "solver/problem.h"

namespace coatday::solver::test {

struct Features {
  bool calendars = false, tables = false, minimum = false, maximum = false, remedies = false, resources = false, holds = false,
       families = false, exclusions = false, dues = false, segments = false;
};
/// One bit a feature, in the order above.
[[nodiscard]] Features features(unsigned bits);

[[nodiscard]] Problem random_problem(const Features&, std::uint64_t seed);

}  // namespace coatday::solver::test
