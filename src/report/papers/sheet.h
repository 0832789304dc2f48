#pragma once
// The day sheet: paper to work from and to write on.

#include <string>

#include "job/plan.h"
#include "report/document/lines.h"

namespace coatday::report {

/// A page a day on which there is work, a form feed between pages; a day that is too long goes on on the next. Never in colour.
[[nodiscard]] std::string sheet_text(const job::Plan&, const std::string& order, const TextStyle&);

}  // namespace coatday::report
