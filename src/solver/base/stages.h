#pragma once
// The order in which bounds spread. Activities on a cycle of lags form one stage, and each stage passes bounds only to later stages.

#include <vector>

namespace coatday::solver {

struct Network;

/// By activity, the number of its stage. Earliest starts spread to the same or a higher number, latest starts to the same or a lower one.
[[nodiscard]] std::vector<int> stages(const Network&);

}  // namespace coatday::solver
