#pragma once
// What was found in a job or its plan.

#include <optional>
#include <string>
#include <vector>

#include "job/plan.h"
#include "report/document/document.h"

namespace coatday::report {

[[nodiscard]] std::optional<Section> findings(const std::vector<job::Finding>&);
/// Where a mistake stands: " (order.yaml:5:11)"; nothing where that is not known.
[[nodiscard]] std::string place_text(const Location&);

}  // namespace coatday::report
