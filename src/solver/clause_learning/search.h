#pragma once
// The exact search: lazy clause generation over bounds. Every requirement of problem.h is modelled exactly, so what it proves is proven of
// the problem: Schutt, Feydy, Stuckey and Wallace, "Solving RCPSP/max by lazy clause generation", Journal of Scheduling 16 (2013).

#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

#include "solver/base/score.h"
#include "solver/base/stopwatch.h"

namespace coatday::solver::clause_learning {
class Solver;
}

namespace coatday::solver {

struct SearchLimits {
  long conflicts = 0;                       ///< 0: none
  double seconds = 0;                       ///< by `clock`, a cut-off that makes the result depend on the machine; 0: none
  const std::atomic<bool>* stop = nullptr;  ///< to be set from outside; null: never
  Clock clock = Clock::wall;
};

/// Restricts a search to the schedules near one.
struct Neighbourhood {
  std::vector<std::pair<int, Interval>> starts;  ///< of an activity: only in here
  std::vector<std::pair<int, int>> orders;       ///< the one ends before the other starts, where both take part
  std::vector<std::pair<int, int>> branches;     ///< of an alternative: this one is taken
};

struct SearchResult {
  std::optional<Schedule> schedule;  ///< better than what was to be improved; no violations
  bool exhausted = false;            ///< no better one exists (in the neighbourhood) than it, or than what was to be improved
  bool infeasible = false;           ///< no schedule exists at all
  double lateness_bound = 0;         ///< proven of every schedule, with neighbourhoods or without
  Time ready_bound = -unreachable;   ///< likewise
  long conflicts = 0;
};

/// Deterministic but for `seconds` and `stop`. What one call learns serves the next. The problem must outlive it.
class Search {
 public:
  explicit Search(const Problem&);
  Search(const Search&) = delete;
  Search& operator=(const Search&) = delete;
  ~Search();

  /// Whether the problem is within the search's means: weights of goals are not negative, not all goals are optional, the table of
  /// resources over time fits in memory, and the pairs of one family or of an exclusion are not too many to tell apart one by one.
  [[nodiscard]] static bool supports(const Problem&);

  /// Looks for schedules better by lateness, then by the ready time, than `best` (than none: for any), and for the best of them until a
  /// limit is met. `hint` is a schedule to look near first; it need not be sound.
  [[nodiscard]] SearchResult improve(const std::optional<Score>& best, const Schedule* hint, const SearchLimits&,
                                     const Neighbourhood& = {});

  /// A bound on the ready time that the caller has proven.
  void ready_from(Time);

  /// For tests: called with the starts' bounds of each clause learned over starts alone: one of (activity, at least?, value) holds in
  /// every schedule.
  struct StartBound {
    int activity;
    bool at_least;
    Time value;
  };
  void on_learned(std::function<void(const std::vector<StartBound>&)>);
  /// For checks: what it searches with.
  [[nodiscard]] clause_learning::Solver& solver();

 private:
  class Inside;
  std::unique_ptr<Inside> inside_;
};

}  // namespace coatday::solver
