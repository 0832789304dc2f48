#pragma once
// The step of five minutes in which work is planned.

#include <algorithm>
#include <chrono>
#include <cstdint>

#include "quantity/time.h"

namespace coatday::job {

using TimeStep = std::chrono::duration<std::int64_t, std::ratio<300>>;
inline constexpr Minutes time_step = TimeStep(1);

/// The first whole step at or after.
[[nodiscard]] inline Instant at_whole_step(Instant at) { return Instant(std::chrono::ceil<TimeStep>(at)); }

/// A span in steps, rounded up; beyond 100 years as 100 years.
[[nodiscard]] inline std::int64_t whole_steps(Hours span) {
  constexpr Hours longest = std::chrono::hours(100 * 366 * 24);
  return std::chrono::ceil<TimeStep>(std::clamp(span, -longest, longest)).count();
}

/// What is left of a stretch of the day for work in whole steps.
[[nodiscard]] inline Minutes whole_steps_within(Minutes from, Minutes until) {
  return std::max(Minutes(0), Minutes(std::chrono::floor<TimeStep>(until) - std::chrono::ceil<TimeStep>(from)));
}

/// A hands-on time in whole steps: rounded up, and never nothing.
[[nodiscard]] inline Minutes in_whole_steps(Hours span) { return std::max(whole_steps(span), std::int64_t{1}) * time_step; }

}  // namespace coatday::job
