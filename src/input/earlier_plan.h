#pragma once
// A plan that was made before, from its JSON.

#include <tl/expected.hpp>

#include "input/diagnostic.h"
#include "input/read_file.h"
#include "job/request.h"

namespace coatday::input {

/// The start of each event, from the ids and starts of a plan of any version so far; or the first mistake in the file.
[[nodiscard]] tl::expected<job::Starts, Diagnostic> read_earlier_plan(const std::filesystem::path&, const ReadFile&);

}  // namespace coatday::input
