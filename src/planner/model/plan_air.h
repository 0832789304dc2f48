#pragma once
// The air of a plan, what lags behind the air, and the clocks in both. It grows as far as the plan needs it.

#include <memory>
#include <vector>

#include "planner/model/drying_clocks.h"
#include "planner/tasks/loads.h"

namespace coatday::planner {

class PlanAir {
 public:
  PlanAir(const job::Job& job, job::Plan& plan) : job_(job), plan_(plan) {}

  /// What lags behind the air: parts, and the cans of their finishes.
  void add_surfaces(const Loads&);
  /// Writes the shop's air into the plan, from the first record until then. Clocks from before stay valid.
  void extend_to(Instant);
  /// In the plan's air as it is now.
  [[nodiscard]] Clocks& clocks() const { return *clocks_.back(); }
  /// The first record, or where the plan begins.
  [[nodiscard]] Instant begin() const;

 private:
  const job::Job& job_;
  job::Plan& plan_;
  std::vector<std::unique_ptr<Clocks>> clocks_;  // a model keeps the clocks that it was made with
};

}  // namespace coatday::planner
