#include "solver/clause_learning/disjunctive.h"

#include <algorithm>
#include <numeric>

namespace coatday::solver::clause_learning {
namespace {

// By insertion: little has changed since the last time.
void sort(std::vector<int>& tasks, const std::vector<Time>& key) {
  for (std::size_t i = 1; i < tasks.size(); ++i) {
    const int task = tasks[i];
    std::size_t k = i;
    for (; k > 0 && key[at(tasks[k - 1])] > key[at(task)]; --k) tasks[k] = tasks[k - 1];
    tasks[k] = task;
  }
}

constexpr int longest_idle = 1000;

}  // namespace

Disjunctive::Disjunctive(std::vector<Task> tasks)
    : tasks_(std::move(tasks)),
      earliest_(tasks_.size()),
      latest_end_(tasks_.size()),
      by_start_(tasks_.size()),
      by_end_(tasks_.size()),
      place_(tasks_.size()) {
  std::iota(by_start_.begin(), by_start_.end(), 0);
  std::iota(by_end_.begin(), by_end_.end(), 0);
}

std::vector<Engine::Wake> Disjunctive::wakes() const {
  std::vector<Engine::Wake> result;
  for (const Task& task : tasks_) {
    result.push_back({2 * task.start, 0});
    result.push_back({2 * task.start + 1, 0});
  }
  return result;
}

// Resources check the same once everything is fixed, so this propagator may rest. It rests longer after many runs without a find, and with
// many tasks.
bool Disjunctive::propagate(Trail& trail) {
  if (rest_ > 0 && trail.level() > 1) {
    --rest_;
    return true;
  }
  const int before = trail.length();
  bool sound = find_edges(trail);
  if (sound) {
    mirror();
    sound = find_edges(trail);
  }
  idle_ = sound && trail.length() == before ? std::min(idle_ + 1, longest_idle) : idle_ / 2;
  rest_ = idle_ / 4 + static_cast<int>(tasks_.size()) / 8;
  return sound;
}

Literal Disjunctive::starts_from(int task, Time t) const {
  const Task& k = tasks_[at(task)];
  return mirrored_ ? at_most(k.start, -t - k.length) : at_least(k.start, t);
}

Literal Disjunctive::ends_by(int task, Time t) const {
  const Task& k = tasks_[at(task)];
  return mirrored_ ? at_least(k.start, -t) : at_most(k.start, t - k.length);
}

void Disjunctive::read(const Trail& trail) {
  for (std::size_t k = 0; k < tasks_.size(); ++k) {
    const Time low = trail.low(tasks_[k].start), high = trail.high(tasks_[k].start) + tasks_[k].length;
    earliest_[k] = mirrored_ ? -high : low;
    latest_end_[k] = mirrored_ ? -low : high;
  }
  sort(by_start_, earliest_);
  sort(by_end_, latest_end_);
}

void Disjunctive::mirror() {
  mirrored_ = !mirrored_;
  std::swap(by_start_, by_end_);
  std::reverse(by_start_.begin(), by_start_.end());
  std::reverse(by_end_.begin(), by_end_.end());
}

bool Disjunctive::find_edges(Trail& trail) {
  read(trail);
  const int count = static_cast<int>(tasks_.size());
  work_.clear();
  for (int p = 0; p < count; ++p) {
    const int task = by_start_[at(p)];
    place_[at(task)] = p;
    work_.push_back({earliest_[at(task)], tasks_[at(task)].length});
  }
  tree_.fill(work_);
  for (int in = count; in > 0; --in) {
    const int last = by_end_[at(in - 1)];
    const Time by = latest_end_[at(last)];
    if (tree_.all() > by) return overload(trail, in, by);
    while (tree_.one_more() > by) {
      const int p = tree_.who();
      if (!come_after(trail, by_start_[at(p)], in, by)) return false;
      tree_.remove(p);
    }
    tree_.set_aside(place_[at(last)], earliest_[at(last)], tasks_[at(last)].length);
  }
  return true;
}

bool Disjunctive::overload(Trail& trail, int count, Time by) {
  const int first = tree_.first_of_all();
  const Time spare = tree_.all() - by - 1;
  reason_.clear();
  confine(count, first, earliest_[at(by_start_[at(first)])] - spare / 2, by + (spare - spare / 2));
  return trail.refute(reason_);
}

// The set and the task together cannot end by `by`, but the set must. So the task ends last and starts after the set is done.
bool Disjunctive::come_after(Trail& trail, int task, int count, Time by) {
  const Literal after = starts_from(task, tree_.all());
  if (trail.holds(after)) return true;
  const int first_with = tree_.first_of_one_more(), first_without = tree_.first_of_all();
  const Time from = earliest_[at(by_start_[at(first_with)])] - (tree_.one_more() - by - 1);
  reason_.assign(1, starts_from(task, from));
  confine(count, first_with, from, by);
  confine(count, first_without, earliest_[at(by_start_[at(first_without)])], by);
  return trail.set(after, reason_);
}

// The tasks of the set from a place on start at `from` or later and end by `by`.
void Disjunctive::confine(int count, int first_place, Time from, Time by) {
  for (int e = 0; e < count; ++e) {
    const int task = by_end_[at(e)];
    if (place_[at(task)] < first_place) continue;
    reason_.push_back(starts_from(task, from));
    reason_.push_back(ends_by(task, by));
  }
}

}  // namespace coatday::solver::clause_learning
