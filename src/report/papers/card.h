#pragma once
// The customer's card: what it was finished with, from when it may be used how, and how to look after it.

#include "job/job.h"
#include "job/plan.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report {

/// Of a feasible plan, piece by piece; then, to be cut off, what the maker should know of it.
[[nodiscard]] Document card(const job::Plan&, const job::Job&, const Texts&);

}  // namespace coatday::report
