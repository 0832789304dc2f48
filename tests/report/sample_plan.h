#pragma once
// Plans made by hand, so that a report is tested without a planner. Every figure in them is invented.

#include <string>

#include "job/plan.h"

namespace coatday::report::sample {

/// A moment of January 2027 in the sample shop's time zone: 11, 8, 30 -> Mon 11 Jan 08:30.
[[nodiscard]] Instant at(int day, int hour, int minute = 0);

/// A walnut top and four legs, stained and coated twice; glue-up before, a weekend in between. 11 to 20 January 2027, Chicago.
[[nodiscard]] job::Plan table();
/// The same with nothing planned, because it cannot be.
[[nodiscard]] job::Plan impossible();
/// The same after one face was forgotten: the underside's second clear coat is missing.
[[nodiscard]] job::Plan with_hole();
/// Every text in it tries to steer the terminal.
[[nodiscard]] job::Plan hostile(const std::string& evil);

}  // namespace coatday::report::sample
