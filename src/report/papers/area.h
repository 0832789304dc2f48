#pragma once
// The take-off: how much there is to coat.

#include <string>
#include <vector>

#include "job/plan.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report {

/// Every face with its area, by part, with the sums. `pieces` are their names.
[[nodiscard]] Document area(const std::vector<job::FaceEntry>&, const std::vector<std::string>& pieces, const Texts&);

}  // namespace coatday::report
