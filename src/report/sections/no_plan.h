#pragma once
// Why there is no plan, and what would help.

#include <optional>

#include "job/plan.h"
#include "report/document/document.h"

namespace coatday::report {

/// The requirements that contradict each other; nothing where there is a plan.
[[nodiscard]] std::optional<Section> no_plan(const job::Plan&);
/// Changes that would help, where there is no plan or it is late.
[[nodiscard]] std::optional<Section> proposals(const job::Plan&);

}  // namespace coatday::report
