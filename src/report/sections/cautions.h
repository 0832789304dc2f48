#pragma once
// The cautions of a plan: short at a step, in full in a section of their own.

#include <optional>
#include <string>

#include "job/plan.h"
#include "report/document/document.h"

namespace coatday::report {

[[nodiscard]] std::optional<Section> cautions(const job::Plan&);
/// The start of it, as far as its first stop.
[[nodiscard]] std::string short_caution(const job::Plan&, const std::string& key);
/// The same, with all of it for a page, and a link to it.
[[nodiscard]] Phrase caution_at_step(const job::Plan&, const std::string& key);

}  // namespace coatday::report
