#pragma once
// The earliest time by which a set of tasks can be done one after the other, and the same if one more is let in: a binary tree over the
// tasks in order of their earliest start.

#include <vector>

#include "solver/clause_learning/literal.h"

namespace coatday::solver::clause_learning {

class ThetaLambdaTree {
 public:
  struct Work {
    Time earliest, length;
  };
  /// The set of all, which are in order of their earliest start.
  void fill(const std::vector<Work>&);
  void remove(int place);
  /// Out of the set, but one of those that may be let in.
  void set_aside(int place, Time earliest, Time length);

  [[nodiscard]] Time all() const { return nodes_[1].end; }
  [[nodiscard]] Time one_more() const { return nodes_[1].end_more; }
  /// Who it is that makes one_more() what it is.
  [[nodiscard]] int who() const;
  /// The first place of those that make all(), or one_more(), what it is: all later ones in the set do, too.
  [[nodiscard]] int first_of_all() const { return first(false); }
  [[nodiscard]] int first_of_one_more() const { return first(true); }

 private:
  struct Node {
    Time sum, end;            ///< of the set
    Time sum_more, end_more;  ///< with one more
  };
  void put(int place, Node);
  void join(int node);
  [[nodiscard]] int first(bool more) const;

  int leaves_ = 1;
  std::vector<Node> nodes_;
};

}  // namespace coatday::solver::clause_learning
