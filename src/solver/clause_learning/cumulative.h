#pragma once
// Resources over time (time-table reasoning). A use certainly covers the times from its latest begin to its earliest end. Another use that
// does not fit beside this certain usage must lie elsewhere. Each conclusion is explained by the uses that cover one point in time.

#include "solver/clause_learning/arcs.h"
#include "solver/clause_learning/propagator.h"

namespace coatday::solver::clause_learning {

struct Ending {  ///< a use ends by f(x), unless this ending is absent
  Var x = 0;
  Mapping f;
  int absent = -1;  ///< the variable that is `no` when the ending is absent; -1: it never is
};

/// Takes so much of each resource from `begin` until the earliest of its endings, or for ever without one, if all conditions hold.
struct Use {
  Var begin = 0;
  std::vector<Ending> endings;
  std::vector<Demand> demands;  ///< one for each resource, positive
  Conditions conditions;
};

class Cumulative final : public Propagator {
 public:
  /// For the times in [first, last). No use may begin after them.
  Cumulative(const std::vector<int>& capacities, std::vector<Use>, Time first, Time last);

  [[nodiscard]] const std::vector<Use>& uses() const { return uses_; }
  void wake(int use) override;
  bool propagate(Trail&) override;
  void deepen() override { marks_.push_back(changes_.size()); }
  void back(int level) override;

 private:
  struct State {
    Time earliest = 0, latest = 0;     ///< of the begin
    Time ends_after = 0, ends_by = 0;  ///< of the end; not cut at the last time
    Time from = 0, to = 0;             ///< the part of it that is in the profile
    bool certain = false, possible = true, touched = false;
  };
  struct Change {
    int use;
    Time from, to;  ///< as they were before
  };
  struct Load {
    int capacity = 0;
    std::vector<int> level;    ///< by time
    std::vector<int> uses;     ///< that demand the resource
    std::vector<int> amounts;  ///< of each of these uses
    Time from = 0, to = 0;     ///< the times that have changed
    int peak = 0;              ///< the highest level in that time
  };

  void read(const Trail&, int use);
  bool extend(Trail&, int use);
  bool add(Trail&, int use, Time from, Time to);
  void remove(int use, Time from, Time to);
  bool sweep(Trail&, int resource);
  bool filter(Trail&, int use, int resource, int amount);
  bool filter_begin(Trail&, int use, int resource, int amount);
  bool filter_end(Trail&, int use, int resource, int amount);
  bool filter_presence(Trail&, int use, int resource, int amount);
  bool exclude(Trail&, int use, int resource, int amount, Time t);
  void cover(const Trail&, int resource, int spare, int without, Time t);
  void because(const Trail&, int use, Time t);
  [[nodiscard]] static Literal ends_later(const Ending&, Time t);
  [[nodiscard]] std::size_t slot(Time t) const { return at(t - first_); }

  std::vector<Use> uses_;
  std::vector<State> states_;
  std::vector<Load> loads_;
  Time first_, last_;
  std::vector<Change> changes_;
  std::vector<std::size_t> marks_;
  std::vector<int> touched_;
  std::vector<Literal> reason_;
};

}  // namespace coatday::solver::clause_learning
