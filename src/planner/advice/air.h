#pragma once
// Warmer, drier and good air, as changes of a job.

#include "planner/advice/changes.h"

namespace coatday::planner {

/// Heat outside the heated hours, or all day, up to the warmest that the shop is heated to; and drier air. Both are as the keys of the shop file
/// would have it. What a logger has read stays as it is.
enum class Heated { at_night, throughout, either };
[[nodiscard]] ChangeSizes warmth(const job::Job&, const job::Plan&, Heated = Heated::either);
[[nodiscard]] ChangeSizes dryness(const job::Job&, const job::Plan&);
/// 23 °C or warmer and 30 to 50 % RH at all hours: the reference air, or what dries faster without being unusual.
[[nodiscard]] Change good_air();

}  // namespace coatday::planner
