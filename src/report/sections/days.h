#pragma once
// The plan day by day. Waiting is as visible as work.

#include <optional>

#include "job/plan.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report {

/// Nothing where there is no plan. Days without work stand together.
[[nodiscard]] std::optional<Section> days(const job::Plan&, const Texts&);

}  // namespace coatday::report
