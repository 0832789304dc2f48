#pragma once
// What an order takes and costs and when it can be promised, before it is taken.

#include <string>

#include "job/quote.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report {

[[nodiscard]] Document quote(const job::Plan&, const job::Quote&, const shop::Rates&, const std::string& order, const Texts&);

}  // namespace coatday::report
