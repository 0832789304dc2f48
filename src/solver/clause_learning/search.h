#pragma once
// The exact search: lazy clause generation over bounds. It models every requirement of problem.h exactly, so that its proofs hold for the
// problem: Schutt, Feydy, Stuckey and Wallace, "Solving RCPSP/max by lazy clause generation", Journal of Scheduling 16 (2013).

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
  double seconds = 0;                       ///< a limit on `clock`; the result then depends on the machine. 0: none
  const std::atomic<bool>* stop = nullptr;  ///< the caller may set it at any time; null: never
  Clock clock = Clock::wall;
};

/// Restricts a search to schedules near a known one.
struct Neighbourhood {
  std::vector<std::pair<int, Interval>> starts;  ///< the activity starts within the interval
  std::vector<std::pair<int, int>> orders;       ///< the first ends before the second starts, if both take part
  std::vector<std::pair<int, int>> branches;     ///< of the alternative, this branch is taken
};

struct SearchResult {
  std::optional<Schedule> schedule;  ///< better than the best that the caller gave; it has no violations
  bool exhausted = false;            ///< no better schedule than this or the given best exists in the neighbourhood
  bool infeasible = false;           ///< no schedule exists at all
  double lateness_bound = 0;         ///< proven for every schedule, also outside the neighbourhood
  Time ready_bound = -unreachable;   ///< the same
  long conflicts = 0;
};

/// Deterministic, except for `seconds` and `stop`. Later calls use what earlier calls learned. The problem must outlive it.
class Search {
 public:
  explicit Search(const Problem&);
  Search(const Search&) = delete;
  Search& operator=(const Search&) = delete;
  ~Search();

  /// Whether the search can handle the problem. No goal may have a negative weight, and some goal must not be optional. The table of
  /// resources over time must fit into memory. There must not be too many pairs within a family or an exclusion, as each needs a question.
  [[nodiscard]] static bool supports(const Problem&);

  /// Looks for schedules that are better than `best` by lateness, then by ready time (without `best`: for any schedule). Goes on to the
  /// best one until a limit is reached. `hint` is a schedule to look near first; it need not be sound.
  [[nodiscard]] SearchResult improve(const std::optional<Score>& best, const Schedule* hint, const SearchLimits&,
                                     const Neighbourhood& = {});

  /// Takes over a bound on the ready time that the caller has proven.
  void ready_from(Time);

  /// For tests: receives each clause that was learned over starts alone. One of its (activity, at least?, value) holds in every schedule.
  struct StartBound {
    int activity;
    bool at_least;
    Time value;
  };
  void on_learned(std::function<void(const std::vector<StartBound>&)>);
  /// For checks: the solver inside.
  [[nodiscard]] clause_learning::Solver& solver();

 private:
  class Inside;
  std::unique_ptr<Inside> inside_;
};

}  // namespace coatday::solver
