#pragma once
// From a conflict to the clause that it teaches.

#include <vector>

#include "solver/clause_learning/engine.h"

namespace coatday::solver::clause_learning {

struct LearnedClause {
  std::vector<Literal> clause;    ///< empty: nothing holds at all. The first literal is the one to set, the second the last of the others
  int backjump_level = 0;         ///< the level at which it is to be set
  int block_distance = 0;         ///< how many levels it spans
  std::vector<Literal> involved;  ///< all that took part in the conflict
};

class ConflictAnalysis {
 public:
  explicit ConflictAnalysis(Engine& engine) : engine_(engine) {}
  /// Of the trail's conflict: cut where a single literal of the conflict's level leads to it, then without what follows from the rest.
  const LearnedClause& operator()();

 private:
  struct Needed {
    Time value = 0;
    int origin = -1;  ///< the entry that made it so; -1: not needed
  };
  struct Known {  ///< of an entry: up to which value it follows from the rest, and from which it does not
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
  std::vector<BoundVar> bound_vars_;  ///< that were ever needed
  std::vector<Literal> because_;
  std::vector<std::vector<Literal>> pool_;  ///< by depth
  std::vector<Known> known_;                ///< by entry
  int round_ = 0;
  int open_ = 0;  ///< needed literals of the conflict's level
};

}  // namespace coatday::solver::clause_learning
