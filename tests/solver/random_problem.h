#pragma once
// Very small problems with every feature on or off.

#include <cstdint>
#include <functional>

#include "solver/problem.h"

namespace coatday::solver::test {

struct Features {
  bool calendars = false, tables = false, minimum = false, maximum = false, remedies = false, resources = false, holds = false,
       families = false, exclusions = false, dues = false;
};
/// One bit a feature, in the order above.
[[nodiscard]] Features features(unsigned bits);

struct Size {
  int activities = 0;  ///< without remedies; 0: two to four
  Time horizon = 11;
};
[[nodiscard]] Problem random_problem(const Features&, std::uint64_t seed, const Size& = {});

using Draw = std::function<int(int most)>;  ///< a number from 0 to the most
[[nodiscard]] Problem drawn_problem(const Features&, const Draw&, const Size& = {});

}  // namespace coatday::solver::test
