#include "planner/result/postpone_turns.h"

#include <algorithm>
#include <set>

namespace coatday::planner {

namespace {

using solver::Time;

class Turns {
 public:
  Turns(const TaskGraph& graph, const solver::Problem& problem, int people, solver::Schedule& schedule)
      : graph_(graph), problem_(problem), people_(people), schedule_(schedule) {
    for (std::size_t t = 0; t < graph.tasks.size(); ++t) {
      if (!of(t).present || of(t).end <= of(t).start) continue;
      by_start_.insert({of(t).start, t});
      longest_ = std::max(longest_, of(t).end - of(t).start);
    }
  }

  void run() {
    std::vector<Time> latest(graph_.tasks.size(), solver::unreachable);  // ends by when its followers begin
    for (const After& after : graph_.after) {
      if (of(after.task).present) latest[after.other] = std::min(latest[after.other], of(after.task).start);
    }
    const std::vector<std::pair<Time, std::size_t>> last_first(by_start_.rbegin(), by_start_.rend());
    for (const auto& [start, t] : last_first) {
      const Task& task = graph_.tasks[t];
      const bool stays = problem_.activities[t].kept == of(t).start;
      if (task.kind == job::EventKind::turn && !task.done && !stays && latest[t] < solver::unreachable) put_off(t, latest[t]);
    }
  }

 private:
  [[nodiscard]] solver::Assignment& of(std::size_t t) const { return schedule_.activities[t]; }

  void put_off(std::size_t t, Time follower) {
    const Time lasts = of(t).end - of(t).start;
    Time start = follower - lasts;
    while (start > of(t).start) {
      const Time open = last_open(problem_.activities[t].starts, start);
      const Time free = last_free(t, open, lasts);
      if (open == start && free == start) break;
      start = std::min(open, free);
    }
    if (start <= of(t).start) return;
    by_start_.erase({of(t).start, t});
    by_start_.insert({start, t});
    of(t).start = start;
    of(t).end = start + lasts;
  }

  /// The latest allowed start, not after t.
  static Time last_open(const solver::Intervals& open, Time t) {
    Time last = -solver::unreachable;
    for (const solver::Interval& interval : open) {
      if (interval.begin <= t) last = std::min(interval.end - 1, t);
    }
    return last;
  }

  /// `start` when there are hands enough from then on, else a start before the first work that takes them.
  [[nodiscard]] Time last_free(std::size_t turn, Time start, Time lasts) const {
    Time before = start;
    int busy = graph_.tasks[turn].people;
    for (auto next = by_start_.lower_bound({start - longest_, 0}); next != by_start_.end() && next->first < start + lasts; ++next) {
      const auto& [begin, t] = *next;
      if (t == turn || of(t).end <= start) continue;
      busy += graph_.tasks[t].people;  // if there are hands for all of them at once, there are at every moment
      before = std::min(before, begin - lasts);
    }
    return busy <= people_ ? start : before;
  }

  const TaskGraph& graph_;
  const solver::Problem& problem_;
  int people_;
  solver::Schedule& schedule_;
  std::set<std::pair<Time, std::size_t>> by_start_;
  Time longest_ = 0;
};

}  // namespace

void postpone_turns(const TaskGraph& graph, const solver::Problem& problem, int people, solver::Schedule& schedule) {
  Turns(graph, problem, people, schedule).run();
}

}  // namespace coatday::planner
