#include "solver/base/layout.h"

#include <algorithm>

namespace coatday::solver {
namespace {

int segments(const Stretch& stretch) { return static_cast<int>(stretch.segments.size()); }

}  // namespace

Layout::Layout(const Problem& problem) {
  for (const Resource& resource : problem.resources) lines_.push_back({resource.capacity, resource.segment, {}, 0});
}

template <typename Each>
void Layout::each_within(const Line& line, const Interval& time, const Each& each) {
  const auto begins = [](const Laid& laid, Time t) { return laid.time.begin < t; };
  for (auto laid = std::lower_bound(line.laid.begin(), line.laid.end(), time.begin - line.longest, begins);
       laid != line.laid.end() && laid->time.begin < time.end; ++laid) {
    if (laid->time.end > time.begin) each(*laid);
  }
}

std::optional<Stretch> Layout::room(const Demand& demand, const Interval& time) const {
  const Line& line = of(demand.resource);
  std::vector<Interval>& taken = taken_;  // along the resource
  taken.clear();
  each_within(line, time, [&](const Laid& laid) {
    for (const int s : laid.stretch.segments) {
      const int begin = s * line.segment + laid.stretch.begin;
      taken.push_back({begin, begin + laid.stretch.length});
    }
  });
  std::sort(taken.begin(), taken.end(), [](const Interval& a, const Interval& b) { return a.begin < b.begin; });
  const int whole = (demand.amount + line.segment - 1) / line.segment;
  return whole > 1 ? whole_segments(line, whole, taken) : tightest(line, demand.amount, taken);
}

std::optional<Stretch> Layout::whole_segments(const Line& line, int count, const std::vector<Interval>& taken) {
  Stretch result{{}, 0, line.segment};
  auto next = taken.begin();
  for (int s = 0; (s + 1) * line.segment <= line.capacity && segments(result) < count; ++s) {
    while (next != taken.end() && next->end <= s * line.segment) ++next;
    if (next == taken.end() || next->begin >= (s + 1) * line.segment) result.segments.push_back(s);
  }
  return segments(result) == count ? std::optional(std::move(result)) : std::nullopt;
}

std::optional<Stretch> Layout::tightest(const Line& line, int amount, const std::vector<Interval>& taken) {
  int best = -1, least = line.segment + 1;
  const auto consider = [&](int begin, int end) {
    if (end - begin < amount || end - begin >= least) return;
    least = end - begin;
    best = begin;
  };
  auto next = taken.begin();
  for (int s = 0; (s + 1) * line.segment <= line.capacity; ++s) {
    int begin = s * line.segment;
    const int end = begin + line.segment;
    for (; next != taken.end() && next->begin < end; ++next) {
      consider(begin, next->begin);
      begin = std::max(begin, next->end);
    }
    consider(begin, end);
  }
  if (best < 0) return std::nullopt;
  return Stretch{{best / line.segment}, best % line.segment, amount};
}

Time Layout::next_end(int resource, const Interval& time) const {
  Time next = unreachable;
  each_within(of(resource), time, [&](const Laid& laid) { next = std::min(next, laid.time.end); });
  return next;
}

void Layout::lay(int resource, int hold, const Interval& time, const Stretch& stretch) {
  if (time.begin >= time.end) return;
  Line& line = lines_[at(resource)];
  const auto after = [](Time t, const Laid& laid) { return t < laid.time.begin; };
  line.laid.insert(std::upper_bound(line.laid.begin(), line.laid.end(), time.begin, after), {time, hold, stretch});
  line.longest = std::max(line.longest, time.end - time.begin);
}

void Layout::lift(int resource, int hold, const Interval& time) {
  std::vector<Laid>& laid = lines_[at(resource)].laid;
  const auto begins = [](const Laid& l, Time t) { return l.time.begin < t; };
  const auto first = std::lower_bound(laid.begin(), laid.end(), time.begin, begins);
  const auto found = std::find_if(first, laid.end(), [hold](const Laid& l) { return l.hold == hold; });
  if (found != laid.end() && found->time.begin == time.begin) laid.erase(found);
}

Interval held(const Hold& hold, const Schedule& schedule) {
  const auto run = [&](int a) -> const Assignment& { return schedule.activities[at(a)]; };
  Time end = unreachable;
  for (const int until : hold.until) {
    if (run(until).present) end = std::min(end, run(until).start);
  }
  if (const Assignment& from = run(hold.limit_from.activity); hold.limit && from.present) {
    end = std::min(end, hold.limit->at(hold.limit_from.edge == Edge::start ? from.start : from.end));
  }
  return {run(hold.first).start, end};
}

std::optional<std::vector<Stretch>> lay_out(const Problem& problem, const Schedule& schedule) {
  Layout layout(problem);
  std::vector<std::pair<Interval, int>> holds;
  for (int h = 0; h < static_cast<int>(problem.holds.size()); ++h) {
    const int choice = schedule.hold_choice[at(h)];
    if (choice < 0 || !layout.covers(problem.holds[at(h)].choices[at(choice)].resource)) continue;
    const Interval time = held(problem.holds[at(h)], schedule);
    if (time.begin < time.end) holds.emplace_back(time, h);
  }
  std::stable_sort(holds.begin(), holds.end(), [](const auto& a, const auto& b) { return a.first.begin < b.first.begin; });
  std::vector<Stretch> result(problem.holds.size());
  for (const auto& [time, h] : holds) {
    const Demand& demand = problem.holds[at(h)].choices[at(schedule.hold_choice[at(h)])];
    const std::optional<Stretch> room = layout.room(demand, time);
    if (!room) return std::nullopt;
    layout.lay(demand.resource, h, time, *room);
    result[at(h)] = *room;
  }
  return result;
}

}  // namespace coatday::solver
