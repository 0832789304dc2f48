#pragma once
// What would make a plan ready sooner that waits for the shop's air.

#include <optional>
#include <string>

#include "job/advice.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report {

/// A few changes, beside a plan; nothing where none helps.
[[nodiscard]] std::optional<Section> advice(const job::Plan&, const job::Advice&, const Texts&);
/// What each change does: "keep the shop at 22 °C: ready Fri 5 Feb 08:00, 3 days 8 h sooner".
[[nodiscard]] List helps(const job::Plan&, const job::Advice&, const Texts&);
/// Whether any of them is a change of the air.
[[nodiscard]] bool changes_air(const job::Advice&);
/// Heat and vapour do not go together, whatever the plan says.
[[nodiscard]] Section heat_caution();

}  // namespace coatday::report
