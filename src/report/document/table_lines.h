#pragma once
// A document's table on a terminal.

#include "report/document/document.h"
#include "report/document/lines.h"

namespace coatday::report {

/// Wide columns wrap where the page is narrow. A group's title stands above its rows, with the columns' titles below it.
[[nodiscard]] Lines table_lines(const Table&, int indent, const TextStyle&);

}  // namespace coatday::report
