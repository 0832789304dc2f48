#include "solver/lower_bounds/pairs.h"

#include <algorithm>
#include <numeric>

namespace coatday::solver {
namespace {

constexpr long most_deciding = 200'000'000;  // elementary steps

}  // namespace

Pairs::Pairs(const Network& network, const Bounds& bounds, const std::vector<Time>& runs, std::optional<DistanceMatrix> distances,
             std::size_t most)
    : network_(network), distances_(std::move(distances)), run_(runs) {
  if (most > 0) find_pairs(bounds, most);
  if (distances_) {
    possible_ = distances_->consistent();
    if (possible_) decide();
  }
}

void Pairs::find_pairs(const Bounds& bounds, std::size_t most) {
  for (int a = 0; a < network_.size; ++a) {
    for (int b = a + 1; b < network_.size && run_[at(a)] > 0; ++b) {
      if (run_[at(b)] == 0 || bounds.latest(a) >= unreachable || bounds.last_end(a) <= bounds.earliest(b) ||
          bounds.last_end(b) <= bounds.earliest(a))
        continue;
      if (!exclude_each_other(a, b)) continue;
      if (pairs_.size() == most) return;
      pairs_.push_back({a, b});
    }
  }
}

bool Pairs::exclude_each_other(int a, int b) const {
  for (const Demand& one : network_.demands[a]) {
    for (const Demand& other : network_.demands[b]) {
      const bool same = one.resource == other.resource;
      if (same && one.amount + other.amount > network_.problem.resources[at(one.resource)].capacity) return true;
    }
  }
  // Two spans that cover their runs and are on opposite sides.
  for (const Carried& one : network_.carried[a]) {
    for (const Carried& other : network_.carried[b]) {
      if (one.exclusion != other.exclusion || one.right == other.right) continue;
      if (!one.span->tail && !other.span->tail && one.span->lead >= 0 && other.span->lead >= 0) return true;
    }
  }
  return false;
}

// Finds the orders that lags decide, until there are no more or it takes too long.
void Pairs::decide() {
  long steps = 0;
  for (bool changed = true; changed && possible_ && steps < most_deciding;) {
    changed = false;
    for (Pair& pair : pairs_) {
      const bool ab = pair.ab && distances_->at(pair.b, pair.a) + run_[at(pair.a)] <= 0;
      const bool ba = pair.ba && distances_->at(pair.a, pair.b) + run_[at(pair.b)] <= 0;
      if (ab == pair.ab && ba == pair.ba) continue;
      pair.ab = ab;
      pair.ba = ba;
      if (!ab && !ba) {
        possible_ = false;
        return;
      }
      const int first = ab ? pair.a : pair.b, second = ab ? pair.b : pair.a;
      if (distances_->at(first, second) >= run_[at(first)]) continue;
      possible_ = distances_->add(first, second, run_[at(first)]);
      if (!possible_) return;
      changed = true;
      steps += static_cast<long>(network_.size) * network_.size;
    }
  }
}

bool Pairs::tighten(Bounds& bounds, long most_work) const {
  if (!possible_) return false;
  const long until = bounds.work() + most_work;
  bool changed = true;
  for (int sweeps = 0; changed && sweeps < 40 && bounds.work() < until; ++sweeps) {
    changed = false;
    if (!sweep(bounds, changed)) return false;
    if (changed && !bounds.propagate(until - bounds.work())) return false;
  }
  return true;
}

bool Pairs::sweep(Bounds& bounds, bool& changed) const {
  std::vector<Time> soonest(run_.size(), 0);
  for (int a = 0; a < network_.size; ++a) soonest[at(a)] = run_[at(a)] > 0 ? bounds.soonest_end(a) : 0;
  const auto put = [&](int first, int second) {
    const Time latest = bounds.latest_ending(first, bounds.latest(second));
    if (soonest[at(first)] > bounds.earliest(second)) {
      bounds.start_from(second, soonest[at(first)]);
      changed = true;
    }
    if (latest < bounds.latest(first)) {
      bounds.start_by(first, latest);
      changed = true;
    }
    return bounds.earliest(second) <= bounds.latest(second) && bounds.earliest(first) <= bounds.latest(first);
  };
  for (const Pair& pair : pairs_) {
    const bool ab = pair.ab && soonest[at(pair.a)] <= bounds.latest(pair.b);
    const bool ba = pair.ba && soonest[at(pair.b)] <= bounds.latest(pair.a);
    if (ab && ba) continue;
    if (!ab && !ba) return false;
    if (!(ab ? put(pair.a, pair.b) : put(pair.b, pair.a))) return false;
  }
  return true;
}

std::vector<std::vector<int>> Pairs::cliques() const {
  if (pairs_.empty() && !distances_) return {};
  const std::size_t n = at(network_.size);
  std::vector<char> disjoint(n * n, 0);
  const auto set = [&](int a, int b) { disjoint[at(a) * n + at(b)] = disjoint[at(b) * n + at(a)] = 1; };
  for (const Pair& pair : pairs_) set(pair.a, pair.b);
  for (int a = 0; distances_ && a < network_.size; ++a) {
    for (int b = 0; b < network_.size; ++b) {
      if (a != b && run_[at(a)] > 0 && run_[at(b)] > 0 && distances_->at(a, b) >= run_[at(a)]) set(a, b);
    }
  }
  std::vector<std::pair<std::int64_t, int>> by_weight;  // total length of all that may run only one at a time with it, heaviest first
  for (int a = 0; a < network_.size; ++a) {
    std::int64_t weight = run_[at(a)];
    for (int b = 0; b < network_.size; ++b) weight += disjoint[at(a) * n + at(b)] != 0 ? run_[at(b)] : 0;
    if (run_[at(a)] > 0) by_weight.emplace_back(-weight, a);
  }
  std::sort(by_weight.begin(), by_weight.end());
  std::vector<std::vector<int>> result;
  std::vector<char> covered(n, 0);
  for (const auto& [weight, seed] : by_weight) {
    if (result.size() == 48) break;
    if (covered[at(seed)] > 2) continue;
    std::vector<int> members{seed};
    for (const auto& [other_weight, a] : by_weight) {
      const std::size_t row = at(a) * n;
      if (std::all_of(members.begin(), members.end(), [&](int m) { return disjoint[row + at(m)] != 0; })) members.push_back(a);
    }
    if (members.size() < 3) continue;
    for (const int a : members) ++covered[at(a)];
    std::sort(members.begin(), members.end());
    if (std::find(result.begin(), result.end(), members) == result.end()) result.push_back(std::move(members));
  }
  return result;
}

}  // namespace coatday::solver
