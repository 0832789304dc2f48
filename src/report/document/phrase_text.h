#pragma once
// A phrase on a terminal.

#include "report/document/document.h"
#include "report/document/lines.h"

namespace coatday::report {

/// Spans without a mark of their own get `usual`.
[[nodiscard]] Text text_of(const Phrase&, Mark usual = Mark::plain);

}  // namespace coatday::report
