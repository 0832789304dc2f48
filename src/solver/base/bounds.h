#pragma once
// The earliest and latest starts that lags and calendars allow, each with the reason for it.

#include <array>
#include <limits>
#include <optional>
#include <queue>
#include <utility>

#include "solver/base/bound_events.h"
#include "solver/base/network.h"
#include "solver/base/open_branches.h"

namespace coatday::solver {

using Tags = std::vector<Tag>;

/// Ignores lags that have a remedy. The bounds of an activity hold where it takes part. An activity that may be left out receives bounds,
/// and passes them on only to activities that never take part without it. Each alternative passes on what follows from every branch that is
/// still open.
class Bounds {
 public:
  enum Side { earliest_side, latest_side };

  /// With `only`: uses just the requirements with these tags, and those without a tag.
  explicit Bounds(const Network&, std::optional<Tags> only = std::nullopt);

  /// Propagates until nothing changes, or until so much work is done. False where the bounds of a certain activity cross or an alternative
  /// has no branch left; the other bounds are then unfinished.
  bool propagate(long most_work = std::numeric_limits<long>::max());
  /// Lowers a latest start or raises an earliest start. The caller then propagates.
  void start_by(int activity, Time latest);
  void start_from(int activity, Time earliest);

  [[nodiscard]] Time earliest(int activity) const { return value_[earliest_side][at(activity)]; }
  [[nodiscard]] Time latest(int activity) const { return value_[latest_side][at(activity)]; }
  /// The soonest end after the earliest start, the last end after the latest start, and the latest start that can end by t.
  [[nodiscard]] Time soonest_end(int activity) const { return soonest({activity, Edge::end}, earliest(activity)); }
  [[nodiscard]] Time last_end(int activity) const { return last({activity, Edge::end}, latest(activity)); }
  [[nodiscard]] Time latest_ending(int activity, Time t) const { return latest_soonest({activity, Edge::end}, nullptr, t); }
  /// Whether the bounds allow the branch, by its number in Network::branches.
  [[nodiscard]] bool open(int branch) const { return branches_.open(branch); }
  [[nodiscard]] int crossed() const { return crossed_; }
  /// The tags that made the bounds cross: first those behind the earliest start, then those from the latest start backwards.
  [[nodiscard]] Tags reasons() const;
  [[nodiscard]] long work() const { return work_; }

 private:
  [[nodiscard]] bool counts(Tag) const;
  void enqueue(Side, int activity);
  void begin(int activity);
  void begin_latest(int activity);
  [[nodiscard]] Time snapped(Side, int activity, Time) const;
  void set(Side, int activity, Time, Tag, int source);
  void cross(int activity);
  void spread(Side, int activity);
  void give(Side, int to, Time, Tag, int from);
  [[nodiscard]] Time by(Side, const MinimumLag&) const;
  [[nodiscard]] Time by(Side, const MaximumLag&) const;

  struct Pull {  ///< what a lag from an activity makes of a bound
    Time value;
    Tag tag;
    int from;
  };
  void give_by_branches(Side, int to, int alternative);
  [[nodiscard]] std::optional<Pull> strongest(Side, int to, const Branch&) const;
  void close_what_has_no_room(int activity);
  void close(int activity, int because);

  [[nodiscard]] Time soonest(const Point&, Time start) const;
  [[nodiscard]] Time last(const Point&, Time start) const;
  [[nodiscard]] Time latest_soonest(const Point&, const Function& bound, Time value) const;
  [[nodiscard]] Time latest_last(const Point&, const Function& bound, Time value) const;
  [[nodiscard]] Time inverse(const Point&, const Function& bound, bool shared, Time value) const;

  const Network* network_;
  std::optional<Tags> only_;  ///< sorted
  std::array<std::vector<Time>, 2> value_;
  std::array<std::vector<int>, 2> reason_;
  BoundEvents events_;
  OpenBranches branches_;
  struct Waiting {
    int stage;  ///< negative for latest starts
    int turn;
    int activity;
    bool operator<(const Waiting& other) const { return stage != other.stage ? stage > other.stage : turn > other.turn; }
  };
  std::array<std::priority_queue<Waiting>, 2> queue_;
  std::array<std::vector<char>, 2> queued_;
  int crossed_ = -1;
  int turn_ = 0;
  long work_ = 0;
};

}  // namespace coatday::solver
