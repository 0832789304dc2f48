#include "planner/model/hands_bound.h"

#include <algorithm>
#include <numeric>
#include <set>

#include "job/plan.h"

namespace coatday::planner {

namespace {

using solver::Time;

bool delivers(const job::Job& job, const Task& task) {
  const job::OrderPiece& piece = job.order.pieces[*task.piece];
  return std::any_of(piece.work.begin(), piece.work.end(),
                     [&](const job::OrderWork& w) { return w.delivery && task.step_id.load.empty() && task.step_id.step == w.work.id; });
}

/// Of one person, by piece.
std::vector<Minutes> work_left(const job::Job& job, const TaskGraph& graph) {
  std::vector<Minutes> work(job.order.pieces.size(), Minutes{0});
  for (const Task& task : graph.tasks) {
    const bool counts = task.piece && !task.optional && !task.done && !task.milestone && !delivers(job, task);
    if (!counts) continue;
    const Minutes by_crew = task.crew ? task.crew->hands_on * task.crew->people : Minutes::max();
    work[*task.piece] += std::min(task.hands_on * task.people, by_crew);
  }
  return work;
}

/// When everybody, from that moment on, would have done so much; 0 where that is nothing.
class Everybody {
 public:
  Everybody(const job::Job& job, const Calendar& calendar) : calendar_(calendar), people_(std::max(1, job.shop.people)) {}

  [[nodiscard]] Time over(Time from, Minutes work) const {
    Time left = static_cast<Time>(work / job::time_step) / people_;
    if (left == 0) return 0;
    const solver::Intervals& open = calendar_.working();
    auto stretch = std::upper_bound(open.begin(), open.end(), from, [](Time t, const solver::Interval& one) { return t < one.end; });
    for (; stretch != open.end(); ++stretch) {
      const Time begin = std::max(from, stretch->begin);
      if (left <= stretch->end - begin) return begin + left;
      left -= stretch->end - begin;
    }
    return calendar_.horizon();
  }

 private:
  const Calendar& calendar_;
  Time people_;
};

}  // namespace

Time busy_until(const job::Job& job, const TaskGraph& graph, const Calendar& calendar) {
  const std::vector<Minutes> work = work_left(job, graph);
  return Everybody(job, calendar).over(0, std::accumulate(work.begin(), work.end(), Minutes{0}));
}

int days_late_bound(const job::Job& job, const TaskGraph& graph, const Calendar& calendar, const Grid& grid,
                    const std::vector<int>& alone) {
  const std::vector<Minutes> work = work_left(job, graph);
  const Everybody everybody(job, calendar);
  const int sum = std::accumulate(alone.begin(), alone.end(), 0);
  std::vector<std::size_t> by_due;
  std::set<Time> starts;
  const auto start = [&](std::size_t p) { return std::max<Time>(0, grid.up(job.order.pieces[p].start.value_or(grid.instant(0)))); };
  for (std::size_t p = 0; p < alone.size(); ++p) {
    if (!job.order.pieces[p].promised) continue;
    by_due.push_back(p);
    starts.insert(start(p));
  }
  const auto due = [&](std::size_t p) { return *job.order.pieces[p].promised; };
  std::stable_sort(by_due.begin(), by_due.end(), [&](std::size_t a, std::size_t b) { return due(a) < due(b); });
  int least = sum;
  for (const Time from : starts) {
    Minutes together{0};
    int others = sum;
    for (const std::size_t last : by_due) {
      if (start(last) < from) continue;
      together += work[last];
      others -= alone[last];
      least = std::max(least, others + job::days_late(job.shop.zone, due(last), grid.instant(everybody.over(from, together))));
    }
  }
  return least;
}

}  // namespace coatday::planner
