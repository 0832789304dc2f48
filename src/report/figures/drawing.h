#pragma once
// The pieces, part by part, from their own sizes: every face shaded by the coats that it gets.

#include "job/job.h"
#include "job/plan.h"
#include "report/document/document.h"
#include "report/sections/chosen_pieces.h"
#include "report/words.h"

namespace coatday::report::page {

/// For the page alone. Job and plan outlive the section.
[[nodiscard]] Section drawings(const job::Job&, const job::Plan&, const Texts&, const ChosenPieces& = {});

}  // namespace coatday::report::page
