#pragma once
// Where the time goes, in a line.

#include <string>
#include <vector>

#include "job/plan.h"

namespace coatday::report {

/// "drying 16 days, waiting for a rack 20, shop closed 9": causes of a day or more. Of several orders a line each, the last ready first.
[[nodiscard]] std::vector<std::string> time_spent_texts(const job::Plan&);

}  // namespace coatday::report
