#pragma once
// A quote for other programs.

#include <string>
#include <string_view>

#include "job/plan.h"
#include "job/quote.h"

namespace coatday::report {

/// "coatday-quote/1". `version` is the program's.
[[nodiscard]] std::string quote_json(const job::Plan&, const job::Quote&, const shop::Rates&, const std::string& order,
                                     std::string_view version);

}  // namespace coatday::report
