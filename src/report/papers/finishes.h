#pragma once
// The finishes: a list of all, and a page for each.

#include <string>

#include "finish/catalogue.h"
#include "report/document/lines.h"

namespace coatday::report {

[[nodiscard]] std::string finishes_text(const finish::Catalogue&, const TextStyle&);
[[nodiscard]] std::string finish_text(const finish::Product&, const TextStyle&);

}  // namespace coatday::report
