#pragma once
// The plan for other programs, and for anyone who wants to check it with code of their own: "coatday-plan/2".

#include <string>
#include <string_view>

#include "job/advice.h"
#include "job/plan.h"

namespace coatday::report {

/// Instants are ISO 8601 with offset, quantities SI with the unit in the key, humidity a fraction. One element of an array a line.
/// `version` is the program's.
[[nodiscard]] std::string plan_json(const job::Plan&, std::string_view version, const job::Advice& = {});
/// "coatday-what-if/1": both plans' pieces, cost and result, the heat between them, and the coats that moved.
[[nodiscard]] std::string what_if_json(const job::Plan& before, const job::Plan& after, const std::vector<std::string>& set,
                                       std::string_view version);
/// "coatday-advice/1"; with the contradiction and what would help where there is no plan.
[[nodiscard]] std::string advice_json(const job::Plan&, const job::Advice&, std::string_view version);

}  // namespace coatday::report
