#pragma once
// What would make a plan ready sooner that waits for the shop's air.

#include <string>

#include "job/advice.h"
#include "job/plan.h"
#include "report/document/lines.h"

namespace coatday::report {

/// Which single change helps a plan that waits for air, the most helpful first.
[[nodiscard]] std::string advice_text(const job::Plan&, const job::Advice&, const std::string& order, const TextStyle&);

}  // namespace coatday::report
