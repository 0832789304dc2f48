#pragma once
// The variables that stand for activities, and what the builders of the model need to know about them.

#include <initializer_list>
#include <map>

#include "solver/base/problem.h"
#include "solver/clause_learning/engine.h"

namespace coatday::solver::clause_learning {

/// The variables of one activity.
struct Run {
  Var start = 0;
  Var end = -1;      ///< a variable only if the end depends on more than the start
  Var present = -1;  ///< -1: always
  Var shared = -1;   ///< -1: never
};

struct Moment {  ///< f(x); a null f is the identity
  Var x;
  Function f;
};

class ModelVariables {
 public:
  /// Adds the variables of branches, starts and ends. Problem and engine must outlive it.
  ModelVariables(const Problem&, Engine&);
  ModelVariables(const ModelVariables&) = delete;
  ModelVariables& operator=(const ModelVariables&) = delete;

  const Problem& problem;
  Engine& engine;
  [[nodiscard]] const Run& run(int activity) const { return runs_[at(activity)]; }
  [[nodiscard]] int runs() const { return static_cast<int>(runs_.size()); }
  /// By alternative and branch: the question whether the branch is taken.
  [[nodiscard]] const std::vector<std::vector<Var>>& branches() const { return branches_; }

  /// then(point), where a null `then` is the identity.
  [[nodiscard]] Moment moment(const Point&, const Function& then = nullptr) const;
  [[nodiscard]] Mapping mapping(const Moment&) const;
  /// The conditions under which all these activities take part.
  [[nodiscard]] Conditions present(std::initializer_list<int> activities) const;
  /// The soonest and the latest end of a span over all starts of its activity.
  [[nodiscard]] Interval reach(const Span&) const;
  /// y >= the moment, or y <= the moment, while all conditions hold.
  void minimum(const Moment&, Var y, Conditions = {});
  void maximum(const Moment&, Var y, Conditions = {});
  /// Keeps intervals alive for the engine.
  const Intervals* store(Intervals);

 private:
  void add_alternatives();
  void add_activity(int);
  void add_ends(int);

  std::vector<Run> runs_;
  std::vector<std::unique_ptr<Intervals>> stored_;
  std::vector<std::vector<Var>> branches_;  ///< by alternative
  std::map<int, Var> in_alternative_;       ///< by activity that an alternative may leave out: whether it takes part
};

}  // namespace coatday::solver::clause_learning
