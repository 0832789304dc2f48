#pragma once
// The plan for other programs, and for anyone who wants to check it with code of their own: "coatday-plan/3".

#include <string>
#include <string_view>

#include "job/advice.h"
#include "job/plan.h"

namespace coatday::report {

/// Instants are ISO 8601 with offset, quantities SI with the unit in the key, humidity a fraction. One element of an array a line.
/// `version` is the program's.
[[nodiscard]] std::string plan_json(const job::Plan&, std::string_view version, const job::Advice& = {});

}  // namespace coatday::report
