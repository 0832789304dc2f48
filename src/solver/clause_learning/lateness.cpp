#include "solver/clause_learning/lateness.h"

#include <algorithm>

namespace coatday::solver::clause_learning {

std::vector<Engine::Wake> Lateness::wakes() const {
  std::vector<Engine::Wake> result{{2 * total_ + 1, 0}};
  for (const Promise& p : promises_) {
    result.push_back({2 * p.start, 0});
    if (p.present >= 0) result.push_back({2 * p.present, 0});
  }
  return result;
}

// The least lateness of the promise.
std::int64_t Lateness::late(const Trail& trail, const Promise& p) {
  if (p.present >= 0 && !trail.holds(yes(p.present))) return 0;
  return std::int64_t{p.weight} * std::max<Time>(0, trail.low(p.start) - p.due);
}

bool Lateness::propagate(Trail& trail) {
  std::int64_t sum = 0;
  for (const Promise& p : promises_) sum += late(trail, p);
  const Literal total = at_least(total_, static_cast<Time>(std::min<std::int64_t>(sum, unreachable)));
  if (!trail.holds(total)) {
    because(trail, nullptr, sum - total.value);
    if (!trail.set(total, reason_)) return false;
  }
  const std::int64_t room = trail.high(total_) - sum;
  for (const Promise& p : promises_) {
    if (p.present >= 0 && !trail.holds(yes(p.present))) continue;
    const std::int64_t left = room + late(trail, p);
    const std::int64_t steps = left / p.weight;
    if (steps >= std::int64_t{trail.high(p.start)} - p.due) continue;
    because(trail, &p, (steps + 1) * p.weight - left - 1);  // the last argument: what the reason may leave out
    if (p.present >= 0) reason_.push_back(yes(p.present));
    reason_.push_back(at_most(total_, trail.high(total_)));
    if (!trail.set(at_most(p.start, p.due + static_cast<Time>(steps)), reason_)) return false;
  }
  return true;
}

// Explains why the other promises are as late as they are, less `spare`.
void Lateness::because(const Trail& trail, const Promise* without, std::int64_t spare) {
  reason_.clear();
  for (const Promise& p : promises_) {
    const std::int64_t units = late(trail, p);
    if (&p == without || units == 0) continue;
    const std::int64_t steps = std::min(units, spare) / p.weight;
    spare -= steps * p.weight;
    if (steps * p.weight == units) continue;
    reason_.push_back(at_least(p.start, trail.low(p.start) - static_cast<Time>(steps)));
    if (p.present >= 0) reason_.push_back(yes(p.present));
  }
}

}  // namespace coatday::solver::clause_learning
