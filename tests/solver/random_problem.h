#pragma once
// Very small problems with every feature on or off.

#include <cstdint>

#include "solver/base/problem.h"

namespace coatday::solver::test {

struct Features {
  bool calendars = false, tables = false, minimum = false, maximum = false, remedies = false, resources = false, holds = false,
       families = false, exclusions = false, dues = false, alternatives = false, segments = false;
  static constexpr unsigned all = 1U << 11U;  ///< so many combinations of all but the last
};
/// One bit a feature, in the order above.
[[nodiscard]] Features features(unsigned bits);

struct Size {
  int activities = 0;  ///< without remedies; 0: two to four
  Time horizon = 11;
};
[[nodiscard]] Problem random_problem(const Features&, std::uint64_t seed, const Size& = {});

}  // namespace coatday::solver::test
