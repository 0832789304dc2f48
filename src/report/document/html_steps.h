#pragma once
// The work of a day on a page.

#include <set>
#include <string>

#include "report/document/document.h"
#include "report/document/element.h"

namespace coatday::report::page {

/// `shown` are the cautions that stand on the page in full already.
void add_steps(Element parent, const Steps&, std::set<std::string>& shown);

}  // namespace coatday::report::page
