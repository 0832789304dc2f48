#pragma once
// A job is changed and planned anew.

#include <limits>
#include <span>

#include "planner/advice/changes.h"
#include "planner/make/guard.h"
#include "planner/make/make_plan.h"

namespace coatday::planner {

/// The plan of a job with changes made to it.
struct Trial {
  job::Job job;
  Instant from;
  job::Plan plan;
  std::string text;              ///< the changes, in words
  std::vector<std::string> set;  ///< and as keys of the files; empty where one of them has none
};

/// Plans a job again and again, each time with other changes, until the budget is spent.
class Trials {
 public:
  struct Budget {
    int plans = std::numeric_limits<int>::max();
    long work = 0;       ///< conflicts and passes for each plan
    double seconds = 4;  ///< on the processor, for all plans: a guard
  };
  /// Whether a plan is worth having checked.
  using Worth = std::function<bool(const job::Plan&)>;

  Trials(const job::Job& job, const job::Request& request, Budget budget) : job_(job), request_(request), budget_(budget) {}

  /// Returns nothing where the changed job has no plan, where the plan is not worth it or does not count, where the checker finds it wrong, or
  /// where the budget is spent.
  std::optional<Trial> run(std::span<const Change* const> changes, const Worth& worth);

  /// The same once more, from the files with its keys set: what is said to help is what a maker gets. Spends nothing of the budget.
  [[nodiscard]] std::optional<Trial> as_set(Trial, const Worth& worth);

  /// Whether the guard kept a plan from being made.
  [[nodiscard]] bool cut_off() const { return cut_off_; }

 private:
  [[nodiscard]] bool plan(Trial&, const Worth&, Purpose);

  const job::Job& job_;
  const job::Request& request_;
  Budget budget_;
  int made_ = 0;
  bool cut_off_ = false;
  Guard guard_{budget_.seconds};
};

}  // namespace coatday::planner
