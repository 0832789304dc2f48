#pragma once
// The wood of an order for programs.

#include <string>
#include <string_view>

#include "job/job.h"
#include "job/plan.h"
#include "job/wood_findings.h"

namespace coatday::report {

[[nodiscard]] std::string wood_json(const job::Job&, const job::Plan&, const job::WoodFindings&,
                                    std::string_view version);  ///< "coatday-wood/2"

}  // namespace coatday::report
