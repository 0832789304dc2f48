#pragma once
// From a conflict to the clause that the search learns from it.

#include <vector>

#include "solver/clause_learning/engine.h"

namespace coatday::solver::clause_learning {

struct LearnedClause {
  std::vector<Literal> clause;    ///< the first is the one to set, the second the last of the others to fail; empty: contradiction
  int backjump_level = 0;         ///< where to set the first literal
  int block_distance = 0;         ///< the number of decision levels in it
  std::vector<Literal> involved;  ///< all literals that took part in the conflict
};

class ConflictAnalysis {
 public:
  explicit ConflictAnalysis(Engine& engine) : engine_(engine) {}
  /// Learns from the trail's conflict: cuts at the first unique implication point, then removes literals that follow from the others.
  const LearnedClause& operator()();

 private:
  struct Needed {
    Time value = 0;
    int origin = -1;  ///< the entry that made it true; -1: not needed
  };
  struct Known {  ///< of an entry: up to which value it follows from the other literals, and from which value it does not
    int round = 0;
    Time follows = 0, fails = 0;
  };
  void reset();
  void need(Literal, int level);
  bool follows(Literal, int later, int depth);
  void finish(Literal asserted);

  Engine& engine_;
  LearnedClause learned_;
  std::vector<Needed> needed_;        ///< by bound variable
  std::vector<BoundVar> bound_vars_;  ///< needed at some time
  std::vector<Literal> because_;
  std::vector<std::vector<Literal>> pool_;  ///< by depth
  std::vector<Known> known_;                ///< by entry
  int round_ = 0;
  int open_ = 0;  ///< how many needed literals belong to the conflict's level
};

}  // namespace coatday::solver::clause_learning
