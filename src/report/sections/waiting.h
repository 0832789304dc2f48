#pragma once
// What is waited for while nobody is at work.

#include <string>
#include <vector>

#include "job/plan.h"

namespace coatday::report {

/// Nothing is done from `from` until `until`, though there is somebody to do it: what is waited for. Empty where that is too short to say.
[[nodiscard]] std::string idle_text(const job::Plan&, Instant from, Instant until);
/// What dries from `from` on, with what it waits for.
[[nodiscard]] std::vector<std::string> night_text(const job::Plan&, Instant from);
/// What keeps the next step from then on from being done before: a place, a person, its second side or the air: "colour 1 (shelf 9-16): no rack
/// free: ...". Empty where nothing does.
[[nodiscard]] std::string kept_by(const job::Plan&, Instant from);
[[nodiscard]] bool anything_dries(const job::Plan&, Instant from, Instant until);

}  // namespace coatday::report
