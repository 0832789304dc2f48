#pragma once
// A problem with its constraints sorted by activity, and the arithmetic of starts and ends that everything else needs.

#include <span>

#include "solver/base/grouped_lists.h"
#include "solver/base/index.h"
#include "solver/base/problem.h"

namespace coatday::solver {

/// A hard maximum lag binds. A soft one has an optional remedy that may take its place. One with a remedy that takes part anyway binds
/// nothing.
enum class Force { hard, soft, none };

struct Carried {  ///< a span, as its activity sees it
  int exclusion = 0;
  bool right = false;
  const Span* span = nullptr;
};

using Branch = std::vector<int>;  ///< activities, sorted
[[nodiscard]] bool stands_in(int activity, const Branch&);

struct Network {
  explicit Network(const Problem&);

  const Problem& problem;
  int size;
  GroupedLists<int> min_in, min_out, max_in, max_out;  ///< indices of lags, by `to` and by `from`
  GroupedLists<int> remedied;                          ///< by remedy: its soft maximum lags
  GroupedLists<int> holds;                             ///< by activity: the holds with an interval that depends on it
  GroupedLists<int> users, holders;                    ///< by resource: activities and holds that may use it
  GroupedLists<int> families;
  GroupedLists<Carried> carried;
  GroupedLists<Demand> demands;   ///< one for each resource, amounts added up
  std::vector<Force> force;       ///< by maximum lag
  std::vector<Branch> branches;   ///< all branches, alternative by alternative
  std::vector<int> first_branch;  ///< by alternative, and one more for the end
  std::vector<int> alternative;   ///< by activity: the alternative that may leave it out, or -1
  std::vector<int> stage;         ///< by activity, see stages.h
  std::vector<int> kind;          ///< by activity: equal for equal run, demands and exclusions, and equal holds begun
  int kinds = 0;
  std::vector<int> order, rank;  ///< all but the optional activities, predecessors first; and their places in it (-1: optional)

  [[nodiscard]] const Activity& activity(int i) const { return problem.activities[at(i)]; }
  [[nodiscard]] const MinimumLag& min_lag(int i) const { return problem.minimum_lags[at(i)]; }
  [[nodiscard]] const MaximumLag& max_lag(int i) const { return problem.maximum_lags[at(i)]; }
  [[nodiscard]] const Hold& hold(int i) const { return problem.holds[at(i)]; }
  [[nodiscard]] std::span<const Branch> branches_of(int alternative) const;
  /// Whether the activity takes part in every schedule.
  [[nodiscard]] bool certain(int i) const { return !activity(i).optional && alternative[at(i)] < 0; }
  /// Whether `other` takes part wherever the activity does.
  [[nodiscard]] bool implies(int i, int other) const;
  /// Whether the lag makes `to` wait for `from`: none of them is optional, and the lag is not one that the order drops to break a cycle.
  [[nodiscard]] bool precedence(const MinimumLag&) const;

 private:
  void sort_lags();
  void sort_holds();
  void sort_resources();
  void sort_families();
  void sort_branches();
  void find_order();
  void find_kinds();
};

/// The branch that a sound schedule takes.
[[nodiscard]] int taken_branch(const Alternative&, const Schedule&);

[[nodiscard]] bool may_share(const Activity&);
[[nodiscard]] const Intervals& starts_of(const Activity&, bool shared);
[[nodiscard]] Time end_of(const Activity&, Time start, bool shared);
/// f(t), and the latest t in [low, high] with f(t) <= value, or low - 1. A null f is the identity.
[[nodiscard]] Time value_of(const Function&, Time t);
[[nodiscard]] Time latest_of(const Function&, Time value, Time low, Time high);

/// The value of the point when its activity starts at `start`, shared or not, and the inverse of that.
[[nodiscard]] Time value_of(const Activity&, Edge, Time start, bool shared);
[[nodiscard]] Time latest_of(const Activity&, Edge, bool shared, Time value, Time low, Time high);

}  // namespace coatday::solver
