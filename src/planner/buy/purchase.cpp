#include "planner/buy/purchase.h"

#include <algorithm>

#include "planner/buy/cans.h"

namespace coatday::planner {
namespace {

/// Needs of one product as one; the method no longer matters.
std::vector<Need> by_product(std::span<const Need> needs) {
  std::vector<Need> sums;
  for (const Need& need : needs) {
    const Litres litres = need.litres + session_loss(need.method) * need.sessions;
    const auto sum = std::find_if(sums.begin(), sums.end(), [&](const Need& s) { return s.product == need.product; });
    if (sum == sums.end()) {
      sums.push_back(need);
      sums.back().litres = litres;
    } else {
      sum->area += need.area;
      sum->litres += litres;
      sum->first_use = std::min(sum->first_use, need.first_use);
    }
  }
  return sums;
}

/// Nobody gets the last twentieth out of a can, and a brush takes a little more one day than another. Common practice, no source.
constexpr double least_left = 0.05;

/// One more of the smallest cans.
void add_spare(job::Purchase& row, const std::vector<finish::Can>& cans) {
  const finish::Can& smallest =
      *std::min_element(cans.begin(), cans.end(), [](const finish::Can& a, const finish::Can& b) { return a.size < b.size; });
  const auto bought = std::find_if(row.buy.begin(), row.buy.end(), [&](const job::Bought& one) { return one.size == smallest.size; });
  if (bought != row.buy.end()) {
    ++bought->count;
  } else {
    row.buy.push_back({smallest.size, 1, smallest.price});
  }
  row.spare = smallest.size;
  row.left_over += smallest.size;
  if (row.cost && smallest.price) {
    *row.cost += *smallest.price;
  } else {
    row.cost.reset();
  }
}

job::Purchase buy(const Need& need, const finish::Product& product, const shop::Shop& shop) {
  job::Purchase row{.product = product.id,
                    .part = {},
                    .area = need.area,
                    .need = need.litres,
                    .on_hand = {},
                    .buy = {},
                    .left_over = {},
                    .spare = {},
                    .cost = {}};
  row.on_hand = shop::usable_stock(shop, product.id, need.first_use, product.shelf_life_opened);
  const Litres missing = need.litres - row.on_hand;
  const Cover cover = best_cover(product.cans, missing);
  for (std::size_t i = 0; i < product.cans.size(); ++i)
    if (cover.counts[i] > 0) row.buy.push_back({product.cans[i].size, cover.counts[i], product.cans[i].price});
  row.left_over = std::max(Litres(0), cover.total - missing);
  if (product.cans.empty()) return row;
  row.cost = cover.cost;
  constexpr Litres inexact(1e-9);
  if (row.left_over + inexact < least_left * (row.need + row.left_over)) add_spare(row, product.cans);
  return row;
}

/// The share of one part in a row of sets. `paid` is 1 for the part that the price of a set stands with, 0 for the one that comes with it.
job::Purchase share_of(const job::Purchase& sets, const std::string& part, double share, double paid) {
  const auto price = [paid](std::optional<Money> of_set) { return of_set ? std::optional(*of_set * paid) : std::nullopt; };
  job::Purchase row = sets;
  row.part = part;
  row.need = sets.need * share;
  row.on_hand = sets.on_hand * share;
  row.left_over = sets.left_over * share;
  if (sets.spare) row.spare = *sets.spare * share;
  row.cost = price(sets.cost);
  for (job::Bought& bought : row.buy) bought = {bought.size * share, bought.count, price(bought.price)};
  return row;
}

}  // namespace

Litres session_loss(finish::Method method) {
  if (method == finish::Method::aerosol) return Litres(0);  // nothing to clean
  return Litres(method == finish::Method::roller || finish::is_spray(method) ? 0.060 : 0.030);
}

std::vector<job::Purchase> purchase(std::span<const Need> needs, const std::map<std::string, finish::Product>& products,
                                    const shop::Shop& shop) {
  std::vector<job::Purchase> rows;
  for (const Need& need : by_product(needs)) {
    const auto product = products.find(need.product);
    if (product == products.end()) continue;
    const job::Purchase row = buy(need, product->second, shop);
    if (const auto& mix = product->second.two_part) {
      const double base = mix->base_parts / (mix->base_parts + mix->hardener_parts);
      rows.push_back(share_of(row, "base", base, 1));
      rows.push_back(share_of(row, "hardener", 1 - base, 0));
    } else {
      rows.push_back(row);
    }
  }
  return rows;
}

}  // namespace coatday::planner
