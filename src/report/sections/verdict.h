#pragma once
// How good a plan is, in days.

#include <string>

#include "job/plan.h"

namespace coatday::report {

/// One sentence: what is late, and how much of it cannot be helped; else how many days sooner it could be ready at most.
[[nodiscard]] std::string verdict_text(const job::Plan&);

}  // namespace coatday::report
