#pragma once
// Makes ready what a command needs, in one place: opens the files, plans, and has the plan checked before anybody sees it.

#include <tl/expected.hpp>

#include "cli/environment.h"
#include "cli/view.h"

namespace coatday::cli {

/// What the arguments' command needs, or what is printed in its place: mistakes in the files, or faults of our own. Each file is read once.
/// The view keeps a reference to the arguments.
[[nodiscard]] tl::expected<View, Outcome> make_ready(const Arguments&, const Environment&);

/// When to plan from: as said, but not before the order's start; else that start, or the end of what its history holds; else now rounded up
/// to 5 min.
[[nodiscard]] Instant plan_from(const Arguments&, const job::Job&, Instant now);
[[nodiscard]] report::TextStyle text_style(const Arguments&, const Environment&, Units shop_units);

}  // namespace coatday::cli
