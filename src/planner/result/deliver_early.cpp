#include "planner/result/deliver_early.h"

#include <algorithm>

namespace coatday::planner {

namespace {

using solver::Time;

/// None: it does not start in time.
std::optional<Time> first_open(const solver::Intervals& open, Time t) {
  for (const solver::Interval& interval : open) {
    if (t < interval.end) return std::max(t, interval.begin);
  }
  return std::nullopt;
}

}  // namespace

void deliver_early(const TaskGraph& graph, const solver::Problem& problem, solver::Schedule& schedule) {
  for (const Delivery& delivery : graph.deliveries) {
    for (const std::size_t t : {delivery.expected, delivery.safe}) {
      if (!graph.tasks[t].milestone) continue;
      const solver::Intervals& open = problem.activities[t].starts;
      if (open.empty()) continue;
      Time soonest = open.front().begin;
      for (const solver::MinimumLag& lag : problem.minimum_lags) {
        if (static_cast<std::size_t>(lag.to) != t) continue;
        const solver::Assignment& from = schedule.activities[static_cast<std::size_t>(lag.from.activity)];
        if (!from.present) continue;
        const Time point = lag.from.edge == solver::Edge::start ? from.start : from.end;
        soonest = std::max(soonest, lag.bound ? lag.bound->at(point) : point);
      }
      solver::Assignment& own = schedule.activities[t];
      const auto start = first_open(open, soonest);
      if (start && *start < own.start) own.start = own.end = *start;
    }
  }
}

}  // namespace coatday::planner
