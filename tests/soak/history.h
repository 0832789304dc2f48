#pragma once
// What was done of a plan, written into its orders as their history, and from when the rest is planned.

#include <nlohmann/json.hpp>
#include <optional>

#include "tests/soak/case.h"
#include "tests/soak/random.h"

namespace coatday::soak {

/// The case some time later; nothing where the plan has no event.
[[nodiscard]] std::optional<Case> some_time_later(Random&, const Case&, const nlohmann::json& plan);
/// The plan beside it as a file, for --keep.
[[nodiscard]] Case with_earlier_plan(Case, const nlohmann::json& plan);

inline constexpr const char* earlier_plan = "earlier.json";

}  // namespace coatday::soak
