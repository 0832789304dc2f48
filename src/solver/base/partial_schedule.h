#pragma once
// A schedule in the making: which activities are placed, and what they use.

#include <utility>

#include "solver/base/layout.h"
#include "solver/base/network.h"
#include "solver/base/profile.h"

namespace coatday::solver {

/// A time to try for an activity.
struct Candidate {
  int activity = -1;
  Time start = 0;
  Time end = 0;
  bool shared = false;
};

class PartialSchedule {
 public:
  struct Reserved {
    int choice = -1;  ///< -1: nothing is reserved
    Interval time;
    Stretch stretch;  ///< where the resource is laid out; reserve() finds one if there is none yet
  };

  explicit PartialSchedule(const Network&);

  void place(const Candidate&);
  void remove(int activity);
  void reserve(int hold, Reserved);
  /// Gives back what is reserved for the hold.
  Reserved lift(int hold);

  /// From now on the changes are on trial, until they are accepted or undone.
  void begin_trial();
  void accept();
  void undo();
  [[nodiscard]] bool on_trial() const { return on_trial_; }
  /// The activities that were placed or removed in this trial, each once, and how each was before: empty if it was not placed.
  [[nodiscard]] std::vector<int> changed() const;
  [[nodiscard]] const std::vector<std::pair<int, std::optional<Assignment>>>& before() const { return runs_before_; }

  [[nodiscard]] bool placed(int activity) const { return placed_[at(activity)] != 0; }
  [[nodiscard]] const Assignment& run(int activity) const { return runs_[at(activity)]; }
  /// A count that grows with each placement: the later placement has the higher one.
  [[nodiscard]] int turn(int activity) const { return turns_[at(activity)]; }
  [[nodiscard]] const Reserved& reserved(int hold) const { return reserved_[at(hold)]; }
  [[nodiscard]] const Profile& use(int resource) const { return use_[at(resource)]; }
  [[nodiscard]] const Layout& layout() const { return layout_; }
  /// The time that the spans on one side of an exclusion cover.
  [[nodiscard]] const Profile& covered(int exclusion, bool right) const { return covered_[2 * at(exclusion) + (right ? 1 : 0)]; }
  /// Ends and activities of the family's placed runs, sorted.
  [[nodiscard]] const std::vector<std::pair<Time, int>>& ends(int family) const { return ends_[at(family)]; }

  [[nodiscard]] Time point(const Point& p) const { return p.edge == Edge::start ? run(p.activity).start : run(p.activity).end; }
  /// The interval of a span when its activity runs from `start` to `end`.
  [[nodiscard]] static Interval carried(const Span&, Time start, Time end);
  /// Whether another activity of the family ends in [start - sharing_gap, start].
  [[nodiscard]] bool sharing(int activity, Time start) const;

 private:
  void use(int activity, int sign);
  void note_run(int activity);
  void note_hold(int hold);

  const Network& network_;
  std::vector<char> placed_;
  std::vector<Assignment> runs_;
  std::vector<int> turns_;
  std::vector<Reserved> reserved_;
  std::vector<Profile> use_, covered_;
  Layout layout_;
  std::vector<std::vector<std::pair<Time, int>>> ends_;
  int turn_ = 0;

  bool on_trial_ = false;
  std::vector<std::pair<int, std::optional<Assignment>>> runs_before_;
  std::vector<std::pair<int, Reserved>> holds_before_;
  std::vector<char> run_noted_, hold_noted_;  // by activity, by hold: it is among those
};

}  // namespace coatday::solver
