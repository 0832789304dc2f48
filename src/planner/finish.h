#pragma once
// Behind the front door: what finish_plan() does. Tests give it a maker of their own; other rooms do not include this file.

#include <functional>

#include "planner/planner.h"

namespace coatday::planner {

/// Finishes what a maker makes. Nobody gets the plan where the checker finds it wrong, whoever made it.
class Finisher {
 public:
  using Maker = std::function<job::Plan(const job::Job&, const job::Request&)>;

  explicit Finisher(Maker make) : make_(std::move(make)) {}
  [[nodiscard]] tl::expected<FinishedPlan, Faults> run(const job::Job&, const job::Request&) const;

 private:
  Maker make_;
};

}  // namespace coatday::planner
