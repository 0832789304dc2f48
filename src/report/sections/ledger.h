#pragma once
// Which coat goes on which face on which day. What is missing is a hole that is seen.

#include <optional>

#include "job/plan.h"
#include "report/document/document.h"
#include "report/sections/chosen_pieces.h"
#include "report/words.h"

namespace coatday::report {

/// Without a plan: the coats that the schedule has.
[[nodiscard]] std::optional<Section> ledger(const job::Plan&, const Texts&, const ChosenPieces& = {});

}  // namespace coatday::report
