#pragma once
// What may be done with each piece, from when: earliest, expected and safe.

#include <optional>

#include "job/plan.h"
#include "report/document/document.h"
#include "report/sections/chosen_pieces.h"
#include "report/words.h"

namespace coatday::report {

[[nodiscard]] std::optional<Section> hand_over(const job::Plan&, const Texts&, const ChosenPieces& = {});

}  // namespace coatday::report
