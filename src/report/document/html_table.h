#pragma once
// A document's table on a page.

#include <string>

#include "report/document/document.h"
#include "report/document/element.h"

namespace coatday::report::page {

/// Where it is wider than the page it scrolls by itself, also by the keys. `name` is for those who hear the page.
void add_table(Element parent, const Table&, const std::string& name);

}  // namespace coatday::report::page
