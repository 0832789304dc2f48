#pragma once
// The order in which bounds spread: whatever feeds itself through a cycle of lags is one stage, and each stage feeds only later ones.

#include <vector>

namespace coatday::solver {

struct Network;

/// By activity, the number of its stage: earliest starts spread from lower to higher numbers or within one, latest starts the other way.
[[nodiscard]] std::vector<int> stages(const Network&);

}  // namespace coatday::solver
