#pragma once
// Work against capacity: the jobs of a resource must not have to do more within any stretch of time than fits into it, and which cannot do so
// much of its work there as it would from its earliest (latest) start goes after (before). What a job must do within a stretch: Baptiste, Le
// Pape and Nuijten, "Satisfiability tests and time-bound adjustments for cumulative scheduling problems", Annals of Operations Research 92
// (1999). Explained by how long each must run within it, as in Schutt, Feydy and Stuckey, "Explaining time-table-edge-finding propagation for
// the cumulative resource constraint", CPAIOR 2013.

#include "solver/clause_learning/disjunctive.h"

namespace coatday::solver::clause_learning {

class Energetic final : public Propagator {
 public:
  struct Job {  ///< of a task that takes part where all conditions hold
    Task task;
    int amount = 0;
    Conditions conditions;
  };
  Energetic(int capacity, std::vector<Job> jobs);
  [[nodiscard]] std::vector<Engine::Wake> wakes() const;
  bool propagate(Trail&) override;
  void leave_nothing_out() override { thorough_ = true; }

 private:
  struct Window {  ///< in mirrored time a job starts at minus its end
    const Job* job;
    Time earliest, latest;
  };
  struct Stretch {
    Time begin = 0, end = 0;
    std::int64_t spare = 0;  ///< what its work leaves
  };
  struct Rise {
    Time at;
    int by;
  };

  void read(const Trail&);
  [[nodiscard]] std::vector<Time> ends() const;
  bool look_before(Trail&, Time end);
  bool look_at_each(Trail&, Stretch from, Time down_to, std::int64_t slope);
  bool look_at(Trail&, const Stretch&);
  bool filter(Trail&, const Window&, const Stretch&);
  [[nodiscard]] static Time inside(const Window&, const Stretch&);
  void because(const Trail&, const Stretch&, std::int64_t surplus, const Window* without);
  [[nodiscard]] Literal starts_from(const Job&, Time t) const;
  [[nodiscard]] Literal starts_by(const Job&, Time t) const;

  int capacity_;
  std::vector<Job> jobs_;
  std::int64_t largest_ = 0;  ///< work of one
  bool thorough_ = false, mirrored_ = false;
  int idle_ = 0, rest_ = 0;  ///< grows while it finds nothing; and runs to leave out
  std::vector<Window> windows_;
  std::vector<Rise> rises_;
  std::vector<Literal> reason_;
};

}  // namespace coatday::solver::clause_learning
