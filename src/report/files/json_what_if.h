#pragma once
// Plans beside each other, and what would help, for programs.

#include <string>
#include <string_view>
#include <vector>

#include "job/advice.h"
#include "job/plan.h"

namespace coatday::report {

/// "coatday-what-if/3": both plans' pieces, cost and result, the heat between them, and the coats that moved.
[[nodiscard]] std::string what_if_json(const job::Plan& before, const job::Plan& after, const std::vector<std::string>& set,
                                       std::string_view version);
/// "coatday-advice/3"; with the contradiction and what would help where there is no plan.
[[nodiscard]] std::string advice_json(const job::Plan&, const job::Advice&, std::string_view version);

}  // namespace coatday::report
