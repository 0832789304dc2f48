#pragma once
// The air of a plan that grows as far as the plan needs it, what lags behind it, and the clocks over both.

#include <memory>
#include <vector>

#include "plan/make/clocks.h"
#include "plan/make/load.h"

namespace coatday::plan {

class Breath {
 public:
  Breath(const Job& job, Plan& plan) : job_(job), plan_(plan) {}

  /// What lags behind the air: parts, and cans of what goes on them.
  void know_bodies(const Loads&);
  /// The shop's air from the first record to the end of a cure, written into the plan. Clocks from before go on to hold.
  void breathe_until(Instant);
  /// Over the plan's air as it is now.
  [[nodiscard]] Clocks& clocks() const { return *clocks_.back(); }

 private:
  [[nodiscard]] Instant begin() const;

  const Job& job_;
  Plan& plan_;
  std::vector<std::unique_ptr<Clocks>> clocks_;  // a model made with earlier ones still asks those
};

}  // namespace coatday::plan
