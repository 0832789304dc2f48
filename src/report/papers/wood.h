#pragma once
// The wood of an order through its year.

#include <string>

#include "job/job.h"
#include "job/plan.h"
#include "job/wood_findings.h"
#include "report/document/lines.h"

namespace coatday::report {

/// Whether it is ready to be coated, how its boards cup, and how they move on their base.
[[nodiscard]] std::string wood_text(const job::Job&, const job::Plan&, const job::WoodFindings&, const TextStyle&);

}  // namespace coatday::report
