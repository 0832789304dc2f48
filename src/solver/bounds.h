#pragma once
// The earliest and latest starts that lags and calendars leave, each with the reason for it.

#include <array>
#include <limits>
#include <optional>
#include <queue>
#include <utility>

#include "solver/network.h"

namespace coatday::solver {

using Tags = std::vector<Tag>;

/// Lags with a remedy count for nothing; optional activities take bounds from required ones and give none.
class Bounds {
 public:
  enum Side { earliest_side, latest_side };

  /// With `only`: just the requirements with these tags, and those without a tag.
  explicit Bounds(const Network&, std::optional<Tags> only = std::nullopt);

  /// To the fixpoint, or for so much work; false where the bounds of a required activity cross (the rest is then unfinished).
  bool propagate(long most_work = std::numeric_limits<long>::max());
  /// Lowers a latest start or raises an earliest one; for the caller to propagate.
  void start_by(int activity, Time latest);
  void start_from(int activity, Time earliest);

  [[nodiscard]] Time earliest(int activity) const { return value_[earliest_side][static_cast<std::size_t>(activity)]; }
  [[nodiscard]] Time latest(int activity) const { return value_[latest_side][static_cast<std::size_t>(activity)]; }
  /// The soonest end that the earliest start leaves, and the latest start whose soonest end is not after t.
  [[nodiscard]] Time soonest_end(int activity) const { return soonest({activity, Edge::end}, earliest(activity)); }
  [[nodiscard]] Time last_end(int activity) const { return last({activity, Edge::end}, latest(activity)); }
  [[nodiscard]] Time latest_ending(int activity, Time t) const { return latest_soonest({activity, Edge::end}, nullptr, t); }
  [[nodiscard]] int crossed() const { return crossed_; }
  /// The tags that led to the crossing: up to the earliest start, then from the latest start back to where it came from.
  [[nodiscard]] Tags reasons() const;
  [[nodiscard]] long work() const { return work_; }

 private:
  struct Event {  ///< why a bound is what it is: a requirement applied to an earlier bound, then perhaps a calendar
    int source = -1;
    Tag requirement = -1;
    Tag calendar = -1;
  };

  [[nodiscard]] bool counts(Tag) const;
  void enqueue(Side, int activity);
  void begin(int activity);
  void begin_latest(int activity);
  [[nodiscard]] Time snapped(Side, int activity, Time) const;
  void set(Side, int activity, Time, Tag, int source);
  void spread_earliest(int activity);
  void spread_latest(int activity);
  [[nodiscard]] std::vector<Event> chain(Side, int activity) const;

  [[nodiscard]] Time soonest(const Point&, Time start) const;
  [[nodiscard]] Time last(const Point&, Time start) const;
  [[nodiscard]] Time latest_soonest(const Point&, const Function& bound, Time value) const;
  [[nodiscard]] Time latest_last(const Point&, const Function& bound, Time value) const;
  [[nodiscard]] Time inverse(const Point&, const Function& bound, bool shared, Time value) const;

  const Network* network_;
  std::optional<Tags> only_;  ///< sorted
  std::array<std::vector<Time>, 2> value_;
  std::array<std::vector<int>, 2> reason_;
  std::vector<Event> events_;
  struct Waiting {
    int stage;  ///< negated for latest starts
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
