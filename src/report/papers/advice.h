#pragma once
// Which single change helps a plan that waits for the shop's air.

#include <string>

#include "job/advice.h"
#include "job/plan.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report {

/// The most helpful change first.
[[nodiscard]] Document advice_on_air(const job::Plan&, const job::Advice&, const std::string& order, const Texts&);

}  // namespace coatday::report
