#include "solver/lower_bounds/rounds.h"

#include <algorithm>
#include <cstdint>

namespace coatday::solver {
namespace {

constexpr std::size_t most_series = 4;  // of a pool
constexpr std::size_t most_looks = 400'000;

}  // namespace

// With long holds the instants are far apart; with shorter ones, more holds count. So there are several series.
Rounds::Rounds(const Network& network, const Bounds& bounds, bool thorough) : network_(network) {
  for (const Pool& pool : pools(network)) {
    std::vector<Kept> kept;
    for (const int h : pool.holds) {
      const Hold& hold = network.hold(h);
      const Time length = network.certain(hold.first) ? shortest_hold(network, bounds, hold, thorough) : 0;
      if (length > 0 && least_amount(hold) > 0) kept.push_back({hold.first, length, least_amount(hold), h});
    }
    std::sort(kept.begin(), kept.end(), [](const Kept& a, const Kept& b) { return a.length > b.length; });
    std::size_t series = 0;
    for (std::size_t i = 1; i <= kept.size() && series < most_series; ++i) {
      const bool much_shorter = i == kept.size() || kept[i].length < kept[i - 1].length * 3 / 4;
      if (!much_shorter) continue;
      add_series(bounds, pool, {kept.begin(), kept.begin() + static_cast<std::ptrdiff_t>(i)});
      ++series;
    }
  }
}

void Rounds::add_series(const Bounds& bounds, const Pool& pool, std::vector<Kept> kept) {
  std::int64_t amount = 0;
  for (const Kept& one : kept) amount += one.amount;
  if (amount <= pool.capacity) return;
  Series series{pool.capacity, std::move(kept), {}, false};
  find_instants(bounds, series);
  series_.push_back(std::move(series));
}

// Each instant is the last at which every hold is still held that began after the instant before.
void Rounds::find_instants(const Bounds& bounds, Series& series) const {
  Time last = unreachable;
  for (const Kept& kept : series.kept) last = std::min(last, bounds.earliest(kept.activity) - 1);
  for (std::size_t looks = 0; looks < most_looks; looks += series.kept.size()) {
    Time next = unreachable;
    for (const Kept& kept : series.kept) {
      const Time start = next_start(network_.activity(kept.activity), std::max(last + 1, bounds.earliest(kept.activity)));
      if (start > bounds.latest(kept.activity) || start >= next) continue;
      const Time release = soonest_release(network_, bounds, network_.hold(kept.hold), start);
      next = std::min(next, std::max(release, start + kept.length) - 1);
    }
    if (next >= unreachable) {
      series.complete = true;
      return;
    }
    series.instants.push_back(next);
    last = next;
  }
}

bool Rounds::too_many(const Bounds& bounds) const {
  return std::any_of(series_.begin(), series_.end(), [&](const Series& series) { return too_many(bounds, series); });
}

// For every time: counts all holds that must begin by then.
bool Rounds::too_many(const Bounds& bounds, const Series& series) {
  std::vector<std::pair<Time, int>> begun_by;
  for (const Kept& kept : series.kept) begun_by.emplace_back(bounds.latest(kept.activity), kept.amount);
  std::sort(begun_by.begin(), begun_by.end());
  std::int64_t amount = 0;
  for (const auto& [by, more] : begun_by) {
    amount += more;
    // The first instant at or after that time is the last that counts.
    const auto last = std::lower_bound(series.instants.begin(), series.instants.end(), by);
    if (last == series.instants.end() && !series.complete) return false;
    const std::int64_t rounds = (last - series.instants.begin()) + (last == series.instants.end() ? 0 : 1);
    if (amount > rounds * series.capacity) return true;
  }
  return false;
}

}  // namespace coatday::solver
