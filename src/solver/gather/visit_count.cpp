#include "solver/gather/visit_count.h"

#include <algorithm>

#include "solver/base/index.h"

namespace coatday::solver {
namespace {

std::size_t part_of(const std::vector<Time>& begins, Time t) {
  return static_cast<std::size_t>(std::upper_bound(begins.begin(), begins.end(), t) - begins.begin());
}

}  // namespace

VisitCount::VisitCount(const Problem& problem, const Schedule& schedule) : problem_(&problem), days_(problem.presence->days.size() + 1) {
  for (std::size_t a = 0; a < schedule.activities.size(); ++a) {
    if (schedule.activities[a].present) put(static_cast<int>(a), schedule.activities[a]);
  }
}

std::size_t VisitCount::day_of(Time t) const { return part_of(presence().days, t); }

// Cut by working time, and by the days.
std::vector<VisitCount::Stretch> VisitCount::stretches(int a, const Assignment& run) const {
  std::vector<Stretch> all;
  const Intervals& open = presence().open;
  auto hours = std::upper_bound(open.begin(), open.end(), run.start, [](Time t, const Interval& one) { return t < one.end; });
  for (; hours != open.end() && hours->begin < run.end; ++hours) {
    const Interval within{std::max(run.start, hours->begin), std::min(run.end, hours->end)};
    for (Time t = within.begin; t < within.end;) {
      const std::size_t day = day_of(t);
      const Time end = day < presence().days.size() ? std::min(within.end, presence().days[day]) : within.end;
      all.push_back({t, end, end, a});
      t = end;
    }
  }
  if (!all.empty() && all.back().end == run.end) all.back().trails_until += presence().hands[at(a)].trails;
  return all;
}

void VisitCount::touch(std::size_t day) {
  if (days_[day].stale) return;
  days_[day].stale = true;
  stale_.push_back(day);
}

void VisitCount::add(int a, const Assignment& run, int sign) {
  const Activity& activity = problem_->activities[at(a)];
  if (activity.family >= 0 && !run.shared) score_.setups += sign;
  if (presence().hands[at(a)].soon) score_.starts += sign * static_cast<std::int64_t>(run.start);
  if (!activity.kept) return;
  if (run.start != *activity.kept) score_.moved += sign;
  if (part_of(presence().halves, run.start) != part_of(presence().halves, *activity.kept)) score_.half_days += sign;
}

void VisitCount::put(int a, const Assignment& run) {
  add(a, run, 1);
  if (!presence().hands[at(a)].on) return;
  for (const Stretch& stretch : stretches(a, run)) {
    const std::size_t day = day_of(stretch.begin);
    days_[day].stretches.push_back(stretch);
    touch(day);
  }
}

void VisitCount::take(int a, const Assignment& run) {
  add(a, run, -1);
  if (!presence().hands[at(a)].on) return;
  for (const Stretch& stretch : stretches(a, run)) {
    const std::size_t day = day_of(stretch.begin);
    std::erase_if(days_[day].stretches, [a](const Stretch& one) { return one.activity == a; });
    touch(day);
  }
}

Time VisitCount::open_between(Time from, Time until) const {
  Time sum = 0;
  const Intervals& open = presence().open;
  auto hours = std::upper_bound(open.begin(), open.end(), from, [](Time t, const Interval& one) { return t < one.end; });
  for (; hours != open.end() && hours->begin < until; ++hours) sum += std::min(hours->end, until) - std::max(hours->begin, from);
  return sum;
}

void VisitCount::recount(Day& day) const {
  std::sort(day.stretches.begin(), day.stretches.end(),
            [](const Stretch& a, const Stretch& b) { return a.begin != b.begin ? a.begin < b.begin : a.activity < b.activity; });
  day.visits.clear();
  day.counted = day.lone = 0;
  day.idle = 0;
  Time trails_until = 0;
  for (const Stretch& stretch : day.stretches) {
    if (day.visits.empty() || open_between(trails_until, stretch.begin) > presence().gap) {
      day.visits.push_back({stretch.begin, stretch.begin, 0, false, {}});
      trails_until = stretch.begin;
    }
    Visit& visit = day.visits.back();
    if (stretch.begin > visit.until) day.idle += open_between(visit.until, stretch.begin);
    visit.work += std::max(Time(0), stretch.end - std::max(visit.until, stretch.begin));
    visit.until = std::max(visit.until, stretch.end);
    visit.counts = visit.counts || presence().hands[at(stretch.activity)].counts;
    if (visit.activities.empty() || visit.activities.back() != stretch.activity) visit.activities.push_back(stretch.activity);
    trails_until = std::max(trails_until, stretch.trails_until);
  }
  for (const Visit& visit : day.visits) {
    if (!visit.counts) continue;
    ++day.counted;
    if (visit.work < presence().shortest) ++day.lone;
  }
}

const Gathered& VisitCount::score() {
  for (const std::size_t d : stale_) {
    Day& day = days_[d];
    score_.visits -= day.counted;
    score_.lone -= day.lone;
    score_.idle -= day.idle;
    recount(day);
    score_.visits += day.counted;
    score_.lone += day.lone;
    score_.idle += day.idle;
    day.stale = false;
  }
  stale_.clear();
  return score_;
}

std::vector<Visit> VisitCount::visits() const {
  std::vector<Visit> all;
  for (const Day& day : days_) all.insert(all.end(), day.visits.begin(), day.visits.end());
  return all;
}

}  // namespace coatday::solver
