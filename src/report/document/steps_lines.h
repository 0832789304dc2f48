#pragma once
// The work of a day on a terminal.

#include "report/document/document.h"
#include "report/document/lines.h"

namespace coatday::report {

/// Hours, lengths and titles in columns; what each step works on beside its title, details and cautions below.
[[nodiscard]] Lines steps_lines(const Steps&, const TextStyle&);

}  // namespace coatday::report
