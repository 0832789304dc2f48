#pragma once
// The customer's card: what it was finished with, from when it may be used how, and how to look after it.

#include <string>

#include "job/job.h"
#include "job/plan.h"
#include "report/document/lines.h"

namespace coatday::report {

/// Of a feasible plan, piece by piece; then, to be cut off, what the maker should know of it. Never in colour.
[[nodiscard]] std::string card_text(const job::Plan&, const job::Job&, const TextStyle&);

}  // namespace coatday::report
