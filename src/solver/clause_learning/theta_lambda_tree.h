#pragma once
// The earliest time by which a set of tasks can be done one after the other, and the same with one more task: a binary tree over the tasks
// in order of their earliest start (theta-lambda tree).

#include <vector>

#include "solver/clause_learning/literal.h"

namespace coatday::solver::clause_learning {

class ThetaLambdaTree {
 public:
  struct Work {
    Time earliest, length;
  };
  /// Puts all tasks into the set. They must be in order of their earliest start.
  void fill(const std::vector<Work>&);
  void remove(int place);
  /// Takes a task out of the set, but keeps it as a candidate for the one more.
  void set_aside(int place, Time earliest, Time length);

  [[nodiscard]] Time all() const { return nodes_[1].end; }
  [[nodiscard]] Time one_more() const { return nodes_[1].end_more; }
  /// The candidate that gives one_more() its value.
  [[nodiscard]] int who() const;
  /// The first place of the tasks that give all() or one_more() its value. All later tasks of the set belong to them.
  [[nodiscard]] int first_of_all() const { return first(false); }
  [[nodiscard]] int first_of_one_more() const { return first(true); }

 private:
  struct Node {
    Time sum, end;            ///< of the set
    Time sum_more, end_more;  ///< with one candidate more
  };
  void put(int place, Node);
  void join(int node);
  [[nodiscard]] int first(bool more) const;

  int leaves_ = 1;
  std::vector<Node> nodes_;
};

}  // namespace coatday::solver::clause_learning
