#pragma once
// A board or round top of solid wood: its cup for each way of finishing it, and its movement on the base.

#include <string>

#include "job/job.h"
#include "job/wood_findings.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report {

/// Of a part that has a board.
[[nodiscard]] Section wood_board(const job::Job&, const job::WoodFindings&, const job::WoodPart&, const Texts&);
[[nodiscard]] std::string moisture_text(MoistureContent);  ///< "8.7 %"

}  // namespace coatday::report
