#pragma once
// Visits of a schedule, counted day by day, so that a small change costs little.

#include <cstdint>

#include "solver/base/problem.h"

namespace coatday::solver {

/// How well a schedule is gathered. Smaller is better, in this order.
struct Gathered {
  int half_days = 0;  ///< activities on another half day than the one they were kept on
  int setups = 0;     ///< activities with a family that run unshared
  int visits = 0;
  int lone = 0;             ///< visits with hardly any work
  Time idle = 0;            ///< working time within visits in which no hands are on anything
  std::int64_t starts = 0;  ///< of what is the better the sooner, in all
  int moved = 0;            ///< activities that do not start when they were kept to
  auto operator<=>(const Gathered&) const = default;
};

struct Visit {
  Time begin = 0, until = 0;  ///< from the first hands on something to the last
  Time work = 0;              ///< in which hands are on something
  bool counts = false;        ///< else only what makes no visit of its own
  std::vector<int> activities;
};

class VisitCount {
 public:
  /// The problem must have a presence.
  VisitCount(const Problem&, const Schedule&);
  void put(int activity, const Assignment&);
  void take(int activity, const Assignment&);
  [[nodiscard]] const Gathered& score();
  /// In the order of time.
  [[nodiscard]] std::vector<Visit> visits() const;

 private:
  struct Stretch {
    Time begin = 0, end = 0, trails_until = 0;
    int activity = 0;
  };
  struct Day {
    std::vector<Stretch> stretches;
    std::vector<Visit> visits;
    int counted = 0, lone = 0;
    Time idle = 0;
    bool stale = false;
  };
  [[nodiscard]] const Presence& presence() const { return *problem_->presence; }
  [[nodiscard]] std::vector<Stretch> stretches(int activity, const Assignment&) const;
  [[nodiscard]] std::size_t day_of(Time) const;
  [[nodiscard]] Time open_between(Time, Time) const;
  void add(int activity, const Assignment&, int sign);
  void touch(std::size_t day);
  void recount(Day&) const;

  const Problem* problem_;
  std::vector<Day> days_;
  std::vector<std::size_t> stale_;
  Gathered score_;
};

}  // namespace coatday::solver
