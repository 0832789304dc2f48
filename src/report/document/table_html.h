#pragma once
// Tables of the page. Inside this room only.

#include <string>
#include <string_view>
#include <vector>

#include "report/document/element.h"

namespace coatday::report::page {

/// A table with its caption. Where it is wider than the page it scrolls by itself, also by the keys.
Element add_table(Element parent, const std::string& kind, std::string_view caption);
void add_heads(Element table, const std::vector<std::string>& names);

}  // namespace coatday::report::page
