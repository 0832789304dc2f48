// Whole cans against an exhaustive search.
#include "planner/buy/cans.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <tuple>

namespace coatday::planner {
namespace {

using finish::Can;

Can can(double litres) { return {Litres(litres), std::nullopt}; }
Can can(double litres, double price) { return {Litres(litres), Money(price)}; }

std::vector<int> counts(const std::vector<Can>& cans, double need) { return best_cover(cans, Litres(need)).counts; }

TEST(BestCover, IsTheCheapest) {
  const std::vector<Can> cans{can(0.25, 9), can(1, 24), can(2.5, 50)};
  EXPECT_EQ(counts(cans, 0.2), (std::vector{1, 0, 0}));
  EXPECT_EQ(counts(cans, 0.8), (std::vector{0, 1, 0}));
  EXPECT_EQ(counts(cans, 2.2), (std::vector{0, 0, 1}));  // 50, where 1 + 1 + 0.25 costs 57
}

TEST(BestCover, BeatsTakingTheBestValueFirst) {
  const std::vector<Can> cans{can(4, 40), can(3, 33)};
  const Cover cover = best_cover(cans, Litres(6));
  EXPECT_EQ(cover.counts, (std::vector{0, 2}));
  EXPECT_EQ(cover.cost, Money(66));
}

TEST(BestCover, OfEqualPricesLeavesLeastThenTakesFewest) {
  EXPECT_EQ(counts({can(1, 10), can(0.75, 10)}, 0.7), (std::vector{0, 1}));
  EXPECT_EQ(counts({can(0.5, 0.1), can(1, 0.2), can(1.5, 0.3)}, 1.5), (std::vector{0, 0, 1}));
}

TEST(BestCover, WithoutPricesLeavesLeast) {
  EXPECT_EQ(counts({can(1), can(0.25)}, 0.7), (std::vector{0, 3}));
  EXPECT_EQ(counts({can(1), can(0.25)}, 1.0), (std::vector{1, 0}));
  EXPECT_EQ(counts({can(1, 5), can(0.25)}, 0.7), (std::vector{0, 3}));  // one price missing
  EXPECT_EQ(best_cover(std::vector{can(1)}, Litres(0.5)).cost, std::nullopt);
}

// 1 US gallon = 3.785411784 l, 4 quarts, 8 pints (NIST Handbook 44, appendix C; from memory).
TEST(BestCover, OneGallonHoldsAGallon) {
  const double gallon = 3.785411784;
  const std::vector<Can> cans{can(gallon), can(gallon / 4), can(gallon / 8)};
  EXPECT_EQ(counts(cans, gallon), (std::vector{1, 0, 0}));
  EXPECT_EQ(counts(cans, gallon * 1.375), (std::vector{1, 1, 1}));
}

TEST(BestCover, OfNothingIsNothing) {
  EXPECT_EQ(best_cover({}, Litres(3)).total, Litres(0));
  EXPECT_EQ(counts({can(1)}, 0), (std::vector{0}));
  EXPECT_EQ(counts({can(1)}, -2), (std::vector{0}));
}

TEST(BestCover, OfALargeNeedIsQuickAndEnough) {
  const std::vector<Can> cans{can(0.25, 9), can(1, 24), can(2.5, 50), can(0.946352946, 23)};
  const Cover cover = best_cover(cans, Litres(4321));
  EXPECT_GE(cover.total, Litres(4321));
  EXPECT_LT(cover.total, Litres(4323.5));
  EXPECT_GE(*cover.cost, Money(4321 * 20.0));  // 20 a litre is the best there is
  EXPECT_LE(*cover.cost, Money(4321 * 20.0 + 50));
}

struct Worth {
  std::int64_t cents = 0;
  std::int64_t ml = 0;
  int cans = 0;
  auto operator<=>(const Worth&) const = default;
};

/// The best of every count of every can.
Worth exhaustive(const std::vector<std::pair<int, int>>& ml_and_cents, std::size_t i, int need) {
  if (need <= 0) return {};
  const auto [ml, cents] = ml_and_cents[i];
  const bool last = i + 1 == ml_and_cents.size();
  const int enough = (need + ml - 1) / ml;
  Worth best{INT64_MAX, 0, 0};
  for (int n = last ? enough : 0; n <= enough; ++n) {
    const Worth rest = last ? Worth{} : exhaustive(ml_and_cents, i + 1, need - n * ml);
    best = std::min(best, {rest.cents + n * cents, rest.ml + n * ml, rest.cans + n});
  }
  return best;
}

void agrees_with_exhaustive(bool priced) {
  const auto sizes = *rc::gen::resize(4, rc::gen::nonEmpty(rc::gen::container<std::vector<int>>(rc::gen::inRange(40, 900))));
  const int need = *rc::gen::inRange(1, 3000);
  std::vector<std::pair<int, int>> plain;
  std::vector<Can> cans;
  for (const int ml : sizes) {
    const int cents = priced ? *rc::gen::inRange(0, 40) : 0;
    plain.emplace_back(ml, cents);
    cans.push_back(priced ? can(ml * 0.001, cents * 0.01) : can(ml * 0.001));
  }
  const Cover cover = best_cover(cans, Litres(need * 0.001));
  Worth found;
  for (std::size_t i = 0; i < cans.size(); ++i) {
    found.cents += cover.counts[i] * plain[i].second;
    found.ml += cover.counts[i] * plain[i].first;
    found.cans += cover.counts[i];
  }
  RC_ASSERT(found == exhaustive(plain, 0, need));
  RC_ASSERT(std::abs(cover.total.value() - static_cast<double>(found.ml) * 0.001) < 1e-9);
  RC_ASSERT(cover.cost.has_value() == priced);
}

RC_GTEST_PROP(BestCover, AgreesWithExhaustiveSearchByPrice, ()) { agrees_with_exhaustive(true); }
RC_GTEST_PROP(BestCover, AgreesWithExhaustiveSearchByVolume, ()) { agrees_with_exhaustive(false); }

}  // namespace
}  // namespace coatday::planner
