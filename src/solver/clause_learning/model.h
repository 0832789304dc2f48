#pragma once
// A problem in the engine's terms: every requirement of problem.h, exactly.

#include <map>
#include <optional>
#include <utility>

#include "solver/base/problem.h"
#include "solver/clause_learning/disjunctive_set.h"
#include "solver/clause_learning/energetic.h"
#include "solver/clause_learning/engine.h"

namespace coatday::solver::clause_learning {

/// A question whose `yes` makes the first end before the second starts, and its `no` the second before the first.
struct Order {
  Var x = -1;
  Var first = -1, second = -1;  ///< their starts
};

/// What stands for an activity.
struct Run {
  Var start = 0;
  Var end = -1;      ///< where the end depends on more than the start
  Var present = -1;  ///< -1: always
  Var shared = -1;   ///< -1: never
};

class Model {
 public:
  explicit Model(const Problem&);

  Engine engine;
  [[nodiscard]] const Problem& problem() const { return problem_; }
  [[nodiscard]] const Run& run(int activity) const { return runs_[at(activity)]; }
  [[nodiscard]] int runs() const { return static_cast<int>(runs_.size()); }
  [[nodiscard]] Var choice(int hold, int index) const { return choices_[at(hold)][at(index)]; }  ///< -1: the only one
  [[nodiscard]] Var branch(int alternative, int index) const { return branches_[at(alternative)][at(index)]; }

  [[nodiscard]] Var ready() const { return ready_; }        ///< -1: there are no goals
  [[nodiscard]] Var lateness() const { return lateness_; }  ///< -1: nothing can be late
  [[nodiscard]] double lateness_unit() const { return unit_; }
  /// Whether a lateness is exactly its units: else they only bound it from below.
  [[nodiscard]] bool exact_lateness() const { return exact_lateness_; }

  [[nodiscard]] const std::vector<Order>& orders() const { return orders_; }
  /// An answer that makes the one end before the other starts; the same each time.
  Literal precedence(int before, int after);
  [[nodiscard]] const std::map<std::pair<int, int>, Var>& precedences() const { return precedences_; }

  /// When all variables are fixed.
  [[nodiscard]] Schedule schedule() const;
  /// Whether a variable must be decided before there is a schedule.
  [[nodiscard]] bool matters(Var x) const { return at(x) >= idle_.size() || idle_[at(x)] == 0; }
  /// The values that a schedule gives the variables; those that it says nothing of are left.
  void values(const Schedule&, std::vector<Time>&) const;

 private:
  struct Moment {  ///< f(x); a null f is the identity
    Var x;
    Function f;
  };
  // model.cpp
  void add_alternatives();
  void add_activity(int);
  void add_ends(int);
  [[nodiscard]] Moment moment(const Point&, const Function& then = nullptr) const;
  [[nodiscard]] Mapping mapping(const Moment&) const;
  [[nodiscard]] Conditions present(std::initializer_list<int> activities) const;
  void minimum(const Moment&, Var, Conditions = {});
  void maximum(const Moment&, Var, Conditions = {});
  // model_lags.cpp
  void add_lags();
  void add_remedy(const MaximumLag&, std::vector<std::vector<Literal>>& missed);
  void add_partners(int);
  void add_exclusion(const Exclusion&);
  void exclude(const Span&, const Span&);
  [[nodiscard]] Interval reach(const Span&) const;
  [[nodiscard]] bool always_before(const Span& first, const Span& second) const;
  [[nodiscard]] std::optional<Literal> empty(const Span&);
  [[nodiscard]] std::optional<Literal> find_empty(const Span&);
  // model_resources.cpp
  void add_resources();
  [[nodiscard]] std::vector<Use> activity_uses();
  void add_cliques(const DisjunctiveSet&);
  void add_energy(const std::vector<Use>&);
  void add_hold(int, std::vector<Use>&);
  [[nodiscard]] bool fits(const Demand&) const;
  // model_orders.cpp
  void add_orders(const DisjunctiveSet&);
  void add_order(const DisjunctiveSet&, std::size_t, std::size_t);
  Var ask_idly();
  // model_goals.cpp
  void add_goals();
  void add_lateness();
  [[nodiscard]] bool scale_lateness(double scale);

  const Problem& problem_;
  std::vector<Run> runs_;
  std::vector<std::unique_ptr<Intervals>> domains_;  ///< by activity, and others that the engine refers to
  std::vector<std::vector<Var>> choices_;            ///< by hold
  std::vector<std::vector<Var>> branches_;           ///< by alternative
  std::map<int, Var> in_alternative_;                ///< by activity that an alternative may leave out: whether it takes part
  std::vector<char> idle_;                           ///< by variable, as far as it goes
  std::vector<Order> orders_;                        ///< of those that may not overlap
  std::map<std::pair<Var, Var>, Literal> order_of_;  ///< by the start of who is first, and of who is second
  std::map<std::pair<int, int>, Var> precedences_;   ///< others that were asked for
  std::map<const Span*, std::optional<Literal>> empty_;
  Var ready_ = -1, lateness_ = -1;
  double unit_ = 1;
  bool exact_lateness_ = true;
};

}  // namespace coatday::solver::clause_learning
