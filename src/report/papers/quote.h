#pragma once
// What an order takes and costs and when it can be promised, before it is taken.

#include <string>
#include <string_view>

#include "job/quote.h"
#include "report/document/lines.h"

namespace coatday::report {

[[nodiscard]] std::string quote_text(const job::Plan&, const job::Quote&, const shop::Rates&, const std::string& order, const TextStyle&);
/// "coatday-quote/1". `version` is the program's.
[[nodiscard]] std::string quote_json(const job::Plan&, const job::Quote&, const shop::Rates&, const std::string& order,
                                     std::string_view version);

}  // namespace coatday::report
