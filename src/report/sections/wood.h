#pragma once
// What becomes of an order's wood: ready to coat, cup through the year, and movement on its base.

#include <optional>
#include <vector>

#include "job/job.h"
#include "job/plan.h"
#include "job/wood_findings.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report {

/// All that is known, for a paper of its own.
[[nodiscard]] std::vector<Section> wood_sections(const job::Job&, const job::WoodFindings&, const Texts&);
/// The same as one section beside a plan; boards of which nothing is known stand together. Nothing where no part is of solid wood.
[[nodiscard]] std::optional<Section> wood(const job::Job&, const job::WoodFindings&, const Texts&);

}  // namespace coatday::report
