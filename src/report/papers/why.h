#pragma once
// Why a step starts when it does.

#include <optional>
#include <string>

#include "job/plan.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report {

/// Nothing when the plan has no such event.
[[nodiscard]] std::optional<Document> why(const job::Plan&, const std::string& event, const Texts&);
/// The events by their ids.
[[nodiscard]] Document events(const job::Plan&, const Texts&);

}  // namespace coatday::report
