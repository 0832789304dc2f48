#pragma once
// The day sheet: paper to work from and to write on.

#include <string>

#include "job/plan.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report {

/// A section for each day with work: for render_pages.
[[nodiscard]] Document sheet(const job::Plan&, const std::string& order, const Texts&);

}  // namespace coatday::report
