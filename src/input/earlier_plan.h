#pragma once
// A plan that was made before, from its JSON.

#include <tl/expected.hpp>

#include "input/diagnostic.h"
#include "input/read_file.h"
#include "job/request.h"

namespace coatday::input {

/// When each event of the plan starts: of "coatday-plan/2" or "coatday-plan/1", the ids and starts alone. Else the first thing that is wrong with the file.
[[nodiscard]] tl::expected<job::Starts, Diagnostic> read_earlier_plan(const std::filesystem::path&, const ReadFile&);

}  // namespace coatday::input
