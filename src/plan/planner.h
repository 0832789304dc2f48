#pragma once
// From a job to a plan.

#include <atomic>
#include <functional>

#include "plan/plan.h"

namespace coatday::plan {

/// How far the search has come.
struct Progress {
  std::optional<Instant> ready;  ///< of the best plan so far: everything may be delivered
  std::optional<Instant> bound;  ///< nothing can be ready before
  double seconds = 0;
};

struct Request {
  Instant from;        ///< nothing that is not done starts before
  bool insist = true;  ///< where the quick search finds nothing, search on for a plan or the proof that there is none
  double seconds = 0;  ///< to go on searching after the first good plan; the answer then depends on the machine
  long work = 0;       ///< without seconds: conflicts and passes to spend on a small order's quick plan; the same answer on every machine
  std::function<void(const Progress&)> progress{};  ///< called on every better plan or bound
  const std::atomic<bool>* stop = nullptr;          ///< raised: the best plan so far will do
  std::optional<Starts> keep{};                     ///< an earlier plan: what need not move stays where it was
  bool trial = false;                               ///< a plan to be compared: without reasons, and without a bound
};

/// Judges the job without planning: both faces, what goes over what, supports and places, methods, products against schedule and use.
/// Errors are what no plan can mend. The face entries are filled in so that a report can show the ledger.
[[nodiscard]] std::vector<Finding> judge(const Job&);

/// Plans the job from an instant. Never throws for anything in the job; a plan that cannot be is a Plan whose status says so. A job with
/// errors from judge() gives an infeasible plan with those findings.
[[nodiscard]] Plan make_plan(const Job&, const Request&);

/// The take-off alone: the faces of every part and their areas, loads not split.
[[nodiscard]] std::vector<FaceEntry> take_off(const Job&);

}  // namespace coatday::plan
