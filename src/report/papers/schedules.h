#pragma once
// The schedules: a list of all, and a page for each.

#include <string>

#include "finish/catalogue.h"
#include "report/document/lines.h"

namespace coatday::report {

[[nodiscard]] std::string schedules_text(const finish::Catalogue&, const TextStyle&);
[[nodiscard]] std::string schedule_text(const finish::Schedule&, const finish::Catalogue&, const TextStyle&);

}  // namespace coatday::report
