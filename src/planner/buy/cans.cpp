#include "planner/buy/cans.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <map>
#include <tuple>

namespace coatday::planner {
namespace {

// Whole numbers keep equal sums equal. A tenth of a microlitre holds gallons, quarts and pints (3.785411784 l and parts) as exactly as litres.
constexpr double steps_per_litre = 1e10;
constexpr double steps_of_money = 1e4;
constexpr Litres searched(200);

std::int64_t steps(Litres volume) { return std::llround(volume.value() * steps_per_litre); }

struct Size {
  std::size_t can;
  std::int64_t volume;
  std::int64_t price;
};

/// Cheapest way to a sum of sizes, and the size that it ended with.
struct Reached {
  std::int64_t price = 0;
  int cans = 0;
  const Size* last = nullptr;

  [[nodiscard]] auto worth() const { return std::tuple(price, cans); }
};

/// Prices are all counted, or none is.
std::vector<Size> sizes_of(std::span<const finish::Can> cans) {
  const bool priced = std::all_of(cans.begin(), cans.end(), [](const finish::Can& can) { return can.price.has_value(); });
  std::vector<Size> all;
  for (std::size_t i = 0; i < cans.size(); ++i) {
    const std::int64_t price = priced ? std::llround(cans[i].price->value() * steps_of_money) : 0;
    if (steps(cans[i].size) > 0) all.push_back({i, steps(cans[i].size), price});
  }
  return all;
}

/// Most volume for the money, of equals the largest.
const Size& best_value(const std::vector<Size>& sizes) {
  return *std::min_element(sizes.begin(), sizes.end(), [](const Size& a, const Size& b) {
    const auto per_volume = [](const Size& s) { return static_cast<double>(s.price) / static_cast<double>(s.volume); };
    return std::tuple(per_volume(a), -a.volume) < std::tuple(per_volume(b), -b.volume);
  });
}

/// Every sum of sizes that stops short of the need, in ascending order, then the best of those that reach it.
std::vector<const Size*> search(const std::vector<Size>& sizes, std::int64_t need) {
  std::map<std::int64_t, Reached> sums{{0, {}}};
  auto at = sums.begin();
  for (; at != sums.end() && at->first < need; ++at) {
    for (const Size& size : sizes) {
      const Reached next{at->second.price + size.price, at->second.cans + 1, &size};
      const auto [entry, fresh] = sums.try_emplace(at->first + size.volume, next);
      if (!fresh && next.worth() < entry->second.worth()) entry->second = next;
    }
  }
  const auto best = std::min_element(at, sums.end(), [](const auto& a, const auto& b) {
    return std::tuple(a.second.price, a.first, a.second.cans) < std::tuple(b.second.price, b.first, b.second.cans);
  });
  std::vector<const Size*> chosen;
  for (auto sum = best; sum->second.last != nullptr; sum = sums.find(sum->first - sum->second.last->volume))
    chosen.push_back(sum->second.last);
  return chosen;
}

Cover add_up(std::span<const finish::Can> cans, std::vector<int> counts) {
  Cover cover{std::move(counts), Litres(0), Money(0)};
  for (std::size_t i = 0; i < cans.size(); ++i) {
    if (cover.counts[i] == 0) continue;
    cover.total += cans[i].size * cover.counts[i];
    if (cover.cost && cans[i].price) {
      *cover.cost += *cans[i].price * cover.counts[i];
    } else {
      cover.cost.reset();
    }
  }
  return cover;
}

}  // namespace

Cover best_cover(std::span<const finish::Can> cans, Litres need) {
  std::vector<int> counts(cans.size(), 0);
  const std::vector<Size> sizes = sizes_of(cans);
  std::int64_t rest = steps(need);
  if (sizes.empty() || rest <= 0) return add_up(cans, std::move(counts));
  if (need > searched) {
    const Size& bulk = best_value(sizes);
    const std::int64_t many = (rest - steps(searched)) / bulk.volume;
    counts[bulk.can] = static_cast<int>(many);
    rest -= many * bulk.volume;
  }
  for (const Size* size : search(sizes, rest)) ++counts[size->can];
  return add_up(cans, std::move(counts));
}

}  // namespace coatday::planner
