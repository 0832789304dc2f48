#pragma once
// One file a command. Each reads what it needs and answers with an outcome.

#include "cli/arguments.h"
#include "cli/world.h"

namespace coatday::cli {

[[nodiscard]] Outcome plan_command(const Arguments&, const World&);
[[nodiscard]] Outcome buy_command(const Arguments&, const World&);
[[nodiscard]] Outcome why_command(const Arguments&, const World&);
[[nodiscard]] Outcome check_command(const Arguments&, const World&);
[[nodiscard]] Outcome area_command(const Arguments&, const World&);
[[nodiscard]] Outcome finishes_command(const Arguments&, const World&);
[[nodiscard]] Outcome schedules_command(const Arguments&, const World&);

}  // namespace coatday::cli
