#pragma once
// The usual cautions, at the step where they apply. They defer to the label, the local code and licensed practice.

#include <string>
#include <vector>

#include "job/plan.h"

namespace coatday::planner {

/// Keys of the cautions of an event, the gravest first.
[[nodiscard]] std::vector<std::string> cautions_of(const job::Event&, const finish::Product*, const piece::Piece*);
/// The text of a key.
[[nodiscard]] const std::string& caution_text(const std::string& key);

}  // namespace coatday::planner
