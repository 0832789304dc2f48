#include "solver/clause_learning/energetic.h"

#include <algorithm>

namespace coatday::solver::clause_learning {
namespace {

constexpr int longest_rest = 4000;
constexpr std::size_t few = 100;            // jobs; with more it rests longer, as its time grows with their square
constexpr Time longest_thorough = 100'000;  // a run that looks at every moment: beyond this it would not end

}  // namespace

Energetic::Energetic(int capacity, std::vector<Job> jobs) : capacity_(capacity), jobs_(std::move(jobs)) {
  for (const Job& job : jobs_) largest_ = std::max(largest_, std::int64_t{job.amount} * job.task.length);
}

std::vector<Engine::Wake> Energetic::wakes() const {
  std::vector<Engine::Wake> result;
  for (const Job& job : jobs_) {
    result.push_back({2 * job.task.start, 0});
    result.push_back({2 * job.task.start + 1, 0});
    for (const Literal condition : job.conditions) result.push_back({condition.bound_var, 0});
  }
  return result;
}

// It costs much and often concludes little. So it rests, and the longer the less it finds. It never rests at the root.
bool Energetic::propagate(Trail& trail) {
  if (rest_ > 0 && trail.level() > 0 && !thorough_) {
    --rest_;
    return true;
  }
  const int before = trail.length();
  read(trail);
  const std::vector<Time> all = ends();
  const bool sound = std::all_of(all.begin(), all.end(), [&](Time end) { return look_before(trail, end); });
  mirrored_ = !mirrored_;
  idle_ = sound && trail.length() == before ? std::min(2 * idle_ + 1, longest_rest) : idle_ / 2;
  const auto large = static_cast<int>(jobs_.size() * jobs_.size() / (few * few));
  rest_ = idle_ * std::max(1, large);
  return sound;
}

void Energetic::read(const Trail& trail) {
  windows_.clear();
  for (const Job& job : jobs_) {
    if (!std::all_of(job.conditions.begin(), job.conditions.end(), [&](Literal l) { return trail.holds(l); })) continue;
    const Time low = trail.low(job.task.start), high = trail.high(job.task.start), length = job.task.length;
    windows_.push_back({&job, mirrored_ ? -high - length : low, mirrored_ ? -low - length : high});
  }
}

// Good ends of stretches: most work must be done by the latest end of some job. In a thorough run, every time.
std::vector<Time> Energetic::ends() const {
  std::vector<Time> result;
  Time first = unreachable, last = -unreachable;
  for (const Window& w : windows_) {
    first = std::min(first, w.earliest + 1);
    last = std::max(last, w.latest + w.job->task.length);
    if (w.earliest < w.latest) result.push_back(w.latest + w.job->task.length);
  }
  if (thorough_ && last - first <= longest_thorough) {
    result.clear();
    for (Time t = first; t <= last; ++t) result.push_back(t);
  }
  std::sort(result.begin(), result.end());
  result.erase(std::unique(result.begin(), result.end()), result.end());
  return result;
}

// Goes through all stretches with this end, from short to long. Each job adds work until the stretch holds all that it must do there. Then
// looks at the tightest stretch.
bool Energetic::look_before(Trail& trail, Time end) {
  rises_.clear();
  for (const Window& w : windows_) {
    const Time most = std::min(w.job->task.length, end - w.latest);
    if (most <= 0) continue;
    const Time from = std::min(w.earliest + w.job->task.length, end);
    rises_.push_back({from, w.job->amount});
    rises_.push_back({from - most, -w.job->amount});
  }
  std::sort(rises_.begin(), rises_.end(), [](const Rise& a, const Rise& b) { return a.at != b.at ? a.at > b.at : a.by > b.by; });
  Stretch now{end, end, 0}, tightest{end, end, largest_};
  std::int64_t slope = capacity_;
  for (const Rise& rise : rises_) {
    if (thorough_ && !look_at_each(trail, now, rise.at, slope)) return false;
    now.spare += slope * (now.begin - rise.at);
    now.begin = rise.at;
    slope -= rise.by;
    if (rise.by < 0 && now.spare < tightest.spare) tightest = now;
  }
  return tightest.begin == end || look_at(trail, tightest);
}

bool Energetic::look_at_each(Trail& trail, Stretch stretch, Time down_to, std::int64_t slope) {
  while (stretch.begin > down_to) {
    --stretch.begin;
    stretch.spare += slope;
    if (!look_at(trail, stretch)) return false;
  }
  return true;
}

bool Energetic::look_at(Trail& trail, const Stretch& stretch) {
  if (stretch.spare < 0) {
    reason_.clear();
    because(trail, stretch, -stretch.spare - 1, nullptr);
    return trail.refute(reason_);
  }
  if (stretch.spare >= largest_) return true;
  return std::all_of(windows_.begin(), windows_.end(), [&](const Window& w) { return filter(trail, w, stretch); });
}

// How long the job must run within the stretch, wherever it goes.
Time Energetic::inside(const Window& w, const Stretch& s) {
  const Time length = w.job->task.length;
  return std::max<Time>(0, std::min({length, s.end - s.begin, w.earliest + length - s.begin, s.end - w.latest}));
}

// The spare capacity limits how long the job can run there. If it would run longer, it must leave the stretch on the other side.
bool Energetic::filter(Trail& trail, const Window& w, const Stretch& s) {
  const Job& job = *w.job;
  const Time length = job.task.length;
  const std::int64_t must = inside(w, s), most = must + s.spare / job.amount;
  if (most >= std::min(length, s.end - s.begin)) return true;
  const std::int64_t surplus = (most - must + 1) * job.amount - s.spare - 1;
  const Time too_late = s.begin + static_cast<Time>(most) - length + 1, too_soon = s.end - static_cast<Time>(most) - 1;
  if (w.earliest >= too_late && w.earliest <= too_soon) {
    reason_.assign(1, starts_from(job, too_late));
    because(trail, s, surplus, &w);
    if (!trail.set(starts_from(job, too_soon + 1), reason_)) return false;
  }
  if (w.latest <= too_soon && w.latest >= too_late) {
    reason_.assign(1, starts_by(job, too_soon));
    because(trail, s, surplus, &w);
    if (!trail.set(starts_by(job, too_late - 1), reason_)) return false;
  }
  return true;
}

// Says how long each job must run within the stretch. Leaves out as much work as is not needed, first from the literals that came last.
void Energetic::because(const Trail& trail, const Stretch& s, std::int64_t surplus, const Window* without) {
  struct Part {
    const Job* job;
    Time inside;
    int origin;
  };
  std::vector<Part> parts;
  for (const Window& w : windows_) {
    if (&w == without) {
      reason_.insert(reason_.end(), w.job->conditions.begin(), w.job->conditions.end());
      continue;
    }
    const Time time = inside(w, s);
    if (time <= 0) continue;
    const auto origin = [&](Literal l) { return trail.origin(l); };
    parts.push_back(
        {w.job, time, std::max(origin(starts_from(*w.job, s.begin + time - w.job->task.length)), origin(starts_by(*w.job, s.end - time)))});
  }
  std::stable_sort(parts.begin(), parts.end(), [](const Part& a, const Part& b) { return a.origin > b.origin; });
  for (const Part& part : parts) {
    const Time less = static_cast<Time>(std::min<std::int64_t>(part.inside, surplus / part.job->amount));
    surplus -= std::int64_t{less} * part.job->amount;
    const Time time = part.inside - less;
    if (time == 0) continue;
    reason_.insert(reason_.end(), part.job->conditions.begin(), part.job->conditions.end());
    reason_.push_back(starts_from(*part.job, s.begin + time - part.job->task.length));
    reason_.push_back(starts_by(*part.job, s.end - time));
  }
}

Literal Energetic::starts_from(const Job& job, Time t) const {
  return mirrored_ ? at_most(job.task.start, -t - job.task.length) : at_least(job.task.start, t);
}

Literal Energetic::starts_by(const Job& job, Time t) const {
  return mirrored_ ? at_least(job.task.start, -t - job.task.length) : at_most(job.task.start, t);
}

}  // namespace coatday::solver::clause_learning
