#pragma once
// The air of a plan that grows as far as the plan needs it, what lags behind it, and the clocks over both.

#include <memory>
#include <vector>

#include "planner/model/drying_clocks.h"
#include "planner/tasks/loads.h"

namespace coatday::planner {

class PlanAir {
 public:
  PlanAir(const job::Job& job, job::Plan& plan) : job_(job), plan_(plan) {}

  /// What lags behind the air: parts, and cans of what goes on them.
  void add_surfaces(const Loads&);
  /// The shop's air from the first record to the end of a cure, written into the plan. Clocks from before go on to hold.
  void extend_to(Instant);
  /// Over the plan's air as it is now.
  [[nodiscard]] Clocks& clocks() const { return *clocks_.back(); }

 private:
  [[nodiscard]] Instant begin() const;

  const job::Job& job_;
  job::Plan& plan_;
  std::vector<std::unique_ptr<Clocks>> clocks_;  // a model made with earlier ones still asks those
};

}  // namespace coatday::planner
