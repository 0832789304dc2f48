#pragma once
// The first days of a plan in a few lines each. On the page they follow its reader's clock.

#include <optional>

#include "job/plan.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report::page {

/// For the page alone.
[[nodiscard]] Section today(const job::Plan&, const Texts&);

}  // namespace coatday::report::page
