#pragma once
// Work against capacity (energetic reasoning): within any stretch of time, the jobs of a resource must not have more work to do than fits.
// A job that cannot do as much there as it would from its earliest start goes later; the same holds for its latest start. The work that a
// job must do within a stretch: Baptiste, Le Pape and Nuijten, "Satisfiability tests and time-bound adjustments for cumulative scheduling
// problems", Annals of Operations Research 92 (1999). The explanations say how long each job must run within the stretch: Schutt, Feydy and
// Stuckey, "Explaining time-table-edge-finding propagation for the cumulative resource constraint", CPAIOR 2013.

#include "solver/clause_learning/disjunctive.h"

namespace coatday::solver::clause_learning {

class Energetic final : public Propagator {
 public:
  struct Job {  ///< takes part if all conditions hold
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
    std::int64_t spare = 0;  ///< the capacity that the work leaves
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
  std::int64_t largest_ = 0;  ///< the most work of one job
  bool thorough_ = false, mirrored_ = false;
  int idle_ = 0, rest_ = 0;  ///< grows while nothing is found; and runs to skip
  std::vector<Window> windows_;
  std::vector<Rise> rises_;
  std::vector<Literal> reason_;
};

}  // namespace coatday::solver::clause_learning
