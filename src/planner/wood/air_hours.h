#pragma once
// The air of a room by the hour, as wood feels it. It is made as far as somebody asks.

#include <span>
#include <vector>

#include "job/job.h"
#include "wood/warp.h"

namespace coatday::planner {

class AirHours {
 public:
  AirHours(job::AirMaker room, Instant from) : room_(std::move(room)), from_(std::chrono::floor<std::chrono::hours>(from)) {}

  [[nodiscard]] Instant from() const { return from_; }
  /// The hours from the one that holds `from` until `until`. Spans from earlier calls are then invalid.
  [[nodiscard]] std::span<const wood::AirSpan> between(Instant from, Instant until);
  /// The mean equilibrium over these hours.
  [[nodiscard]] MoistureContent equilibrium(Instant from, Instant until);
  /// Hours made so far with air that the table of equilibria does not reach.
  [[nodiscard]] long beyond_table() const { return beyond_table_; }

 private:
  void reach(Instant until);

  job::AirMaker room_;
  Instant from_;
  std::vector<wood::AirSpan> hours_;
  long beyond_table_ = 0;
};

}  // namespace coatday::planner
