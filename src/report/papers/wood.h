#pragma once
// The wood of an order through its year.

#include "job/job.h"
#include "job/wood_findings.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report {

/// Whether it is ready to be coated, how its boards cup, and how they move on their base.
[[nodiscard]] Document wood_of_order(const job::Job&, const job::WoodFindings&, const Texts&);

}  // namespace coatday::report
