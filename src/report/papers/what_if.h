#pragma once
// The order as it is beside the order with something changed.

#include <string>
#include <vector>

#include "job/plan.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report {

/// Ready dates, cost, heat, and which coats moved. `set` is what was changed.
[[nodiscard]] Document what_if(const job::Plan& before, const job::Plan& after, const std::vector<std::string>& set,
                               const std::string& order, const Texts&);

}  // namespace coatday::report
