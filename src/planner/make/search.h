#pragma once
// What a plan asks of the solver: how long it searches, and for what.

#include <chrono>

#include "planner/make/guard.h"
#include "planner/make/make_plan.h"
#include "planner/model/time_grid.h"

namespace coatday::planner {

/// The searches of one plan. They share the time of the request.
class Search {
 public:
  Search(const job::Request& request, Purpose purpose, const Grid& grid) : request_(request), purpose_(purpose), grid_(grid) {}

  /// What one search is for.
  struct Aim {
    bool insists = false;  ///< a plan, or the proof that there is none, though the quick search finds nothing
    bool reasons = true;   ///< of a refusal
  };
  /// The quick search first: it says whether the horizon will do. Work limits what follows, not a clock, so that every machine finds the same,
  /// unless the request gives seconds. What somebody follows is gathered into visits.
  [[nodiscard]] solver::Outcome run(const solver::Problem&, Aim) const;

  [[nodiscard]] Hours spent() const { return std::chrono::steady_clock::now() - begun_; }

 private:
  [[nodiscard]] solver::Outcome find(const solver::Problem&, Aim) const;
  [[nodiscard]] double guard() const;
  /// Of the seconds asked for.
  [[nodiscard]] double a_share() const;
  [[nodiscard]] solver::Limits in_seconds() const;

  const job::Request& request_;
  Purpose purpose_;
  const Grid& grid_;
  std::chrono::steady_clock::time_point begun_ = std::chrono::steady_clock::now();
  Guard guard_{request_.guard};
};

}  // namespace coatday::planner
