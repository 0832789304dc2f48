#include "solver/heuristic/pass_queue.h"

#include <algorithm>

namespace coatday::solver {

bool PassQueue::before(const Waiting& a, const Waiting& b) const {
  const PassSettings& settings = state_.settings;
  if (!settings.in_time) return state_.before(a.activity, b.activity);
  const double one = a.soonest + settings.pull * settings.key[at(a.activity)];
  const double other = b.soonest + settings.pull * settings.key[at(b.activity)];
  return one != other ? one < other : state_.before(a.activity, b.activity);
}

void PassQueue::push(int a) {
  if (state_.network.activity(a).optional || state_.partial.placed(a) || state_.unplaced_predecessors[at(a)] > 0) return;
  push({a, state_.settings.in_time ? state_.lower_bound(a, false) : 0});
}

void PassQueue::push(const Waiting& waiting) {
  heap_.push_back(waiting);
  std::push_heap(heap_.begin(), heap_.end(), [this](const Waiting& x, const Waiting& y) { return before(y, x); });
}

PassQueue::Waiting PassQueue::pop() {
  std::pop_heap(heap_.begin(), heap_.end(), [this](const Waiting& x, const Waiting& y) { return before(y, x); });
  const Waiting waiting = heap_.back();
  heap_.pop_back();
  return waiting;
}

void PassQueue::wake(Time t) {
  forget_seen();
  bool sooner = false;
  for (Waiting& waiting : heap_) {
    if (waiting.soonest <= t || !begins_hold(waiting.activity)) continue;
    const Time soonest = std::max(t, state_.lower_bound(waiting.activity, false));
    sooner = sooner || soonest < waiting.soonest;
    waiting.soonest = std::min(waiting.soonest, soonest);
  }
  if (sooner) std::make_heap(heap_.begin(), heap_.end(), [this](const Waiting& x, const Waiting& y) { return before(y, x); });
}

bool PassQueue::begins_hold(int a) const {
  const auto holds = state_.network.holds[a];
  return std::any_of(holds.begin(), holds.end(), [&](int h) { return state_.network.hold(h).first == a; });
}

}  // namespace coatday::solver
