#pragma once
// What becomes of a plan's wood, worked out.

#include "job/wood_findings.h"

namespace coatday::planner {

/// Of a feasible plan of this job.
[[nodiscard]] job::WoodFindings wood_findings(const job::Job&, const job::Plan&);

}  // namespace coatday::planner
