#include "planner/buy/purchase.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace coatday::planner {
namespace {

using finish::Method;

constexpr LocalDay day(int d) { return LocalDay(date::year(2027) / 1 / d); }

finish::Product product(const std::string& id, std::vector<finish::Can> cans) {
  finish::Product made;
  made.id = id;
  made.cans = std::move(cans);
  return made;
}

Need need(const std::string& id, double litres, int sessions = 0, Method method = Method::brush, int first_use = 11) {
  return {id, method, SquareMetres(litres * 10), Litres(litres), sessions, day(first_use)};
}

using Products = std::map<std::string, finish::Product>;

double bought(const job::Purchase& row) {
  double sum = 0;
  for (const job::Bought& b : row.buy) sum += b.size.value() * b.count;
  return sum;
}

void expect_balanced(const job::Purchase& row) {
  EXPECT_NEAR(row.on_hand.value() + bought(row), row.need.value() + row.left_over.value(), 1e-9) << row.product << ' ' << row.part;
}

TEST(Purchase, AddsWhatEverySessionLoses) {
  const Products products{{"clear", product("clear", {{Litres(1), Money(20)}})}};
  const auto rows = purchase(std::vector{need("clear", 0.8, 2), need("clear", 0.1, 1, Method::hvlp_spray)}, products, {});
  ASSERT_EQ(rows.size(), 1U);
  EXPECT_NEAR(rows[0].need.value(), 0.8 + 2 * 0.03 + 0.1 + 0.06, 1e-12);
  EXPECT_NEAR(rows[0].area.value(), 9, 1e-12);
  ASSERT_EQ(rows[0].buy.size(), 1U);
  EXPECT_EQ(rows[0].buy[0].count, 2);
  EXPECT_EQ(rows[0].cost, Money(40));
  expect_balanced(rows[0]);
}

TEST(Purchase, LossesDependOnTheTool) {
  EXPECT_EQ(session_loss(Method::wipe), session_loss(Method::brush));
  EXPECT_GT(session_loss(Method::roller), session_loss(Method::pad));
  EXPECT_EQ(session_loss(Method::airless_spray), session_loss(Method::roller));
  EXPECT_EQ(session_loss(Method::aerosol), Litres(0));
}

TEST(Purchase, UsesTheShelfFirst) {
  const Products products{{"clear", product("clear", {{Litres(1), {}}, {Litres(0.25), {}}})}};
  shop::Shop shop;
  shop.stock = {{"clear", Litres(0.4), {}, day(20), {}}};
  const auto rows = purchase(std::vector{need("clear", 0.6)}, products, shop);
  EXPECT_EQ(rows.at(0).on_hand, Litres(0.4));
  EXPECT_DOUBLE_EQ(bought(rows[0]), 0.25);
  EXPECT_NEAR(rows[0].left_over.value(), 0.05, 1e-12);
}

TEST(Purchase, BuysNothingWhereTheShelfIsEnough) {
  const Products products{{"clear", product("clear", {{Litres(1), Money(20)}})}};
  shop::Shop shop;
  shop.stock = {{"clear", Litres(0.9), {}, {}, {}}};
  const auto rows = purchase(std::vector{need("clear", 0.6)}, products, shop);
  EXPECT_TRUE(rows.at(0).buy.empty());
  EXPECT_NEAR(rows[0].left_over.value(), 0.3, 1e-12);
  EXPECT_EQ(rows[0].cost, Money(0));
}

/// 0.94 of a litre leaves more than a twentieth of it, 0.96 less: one more of the smallest cans.
TEST(Purchase, LeavesATwentieth) {
  const Products products{{"clear", product("clear", {{Litres(1), Money(20)}, {Litres(0.25), Money(8)}})}};
  const auto enough = purchase(std::vector{need("clear", 0.94)}, products, {});
  EXPECT_FALSE(enough.at(0).spare);
  EXPECT_DOUBLE_EQ(bought(enough[0]), 1);
  const auto tight = purchase(std::vector{need("clear", 0.96)}, products, {});
  EXPECT_EQ(tight.at(0).spare, Litres(0.25));
  EXPECT_DOUBLE_EQ(bought(tight[0]), 1.25);
  EXPECT_EQ(tight[0].cost, Money(28));
  EXPECT_NEAR(tight[0].left_over.value(), 0.29, 1e-12);
  shop::Shop shop;
  shop.stock = {{"clear", Litres(1), {}, {}, {}}};
  const auto shelf = purchase(std::vector{need("clear", 0.96)}, products, shop);
  EXPECT_DOUBLE_EQ(bought(shelf.at(0)), 0.25) << "the can on the shelf counts like one that is bought";
}

TEST(Purchase, StockCountsIfItIsGoodOnTheDayOfTheFirstUse) {
  Products products{{"clear", product("clear", {{Litres(1), {}}})}};
  products["clear"].shelf_life_opened = Hours(10 * 24);
  shop::Shop shop;
  shop.stock = {{"clear", Litres(0.5), day(5), {}, {}}};
  EXPECT_EQ(
      purchase(std::vector{need("clear", 1, 0, Method::brush, 20), need("clear", 1, 0, Method::brush, 15)}, products, shop).at(0).on_hand,
      Litres(0.5));
  EXPECT_EQ(purchase(std::vector{need("clear", 1, 0, Method::brush, 20)}, products, shop).at(0).on_hand, Litres(0));
}

TEST(Purchase, WithoutCansTellsTheNeedAlone) {
  const auto rows = purchase(std::vector{need("clear", 0.6)}, {{"clear", product("clear", {})}}, {});
  EXPECT_TRUE(rows.at(0).buy.empty());
  EXPECT_EQ(rows[0].need, Litres(0.6));
  EXPECT_EQ(rows[0].left_over, Litres(0));
  EXPECT_FALSE(rows[0].cost.has_value());
}

TEST(Purchase, KeepsTheOrderOfFirstNeeds) {
  const Products products{{"a", product("a", {})}, {"z", product("z", {})}};
  const auto rows = purchase(std::vector{need("z", 1), need("a", 1), need("z", 1)}, products, {});
  ASSERT_EQ(rows.size(), 2U);
  EXPECT_EQ(rows[0].product, "z");
  EXPECT_EQ(rows[0].need, Litres(2));
  EXPECT_EQ(rows[1].product, "a");
}

TEST(Purchase, TwoPartsShareTheSetsByTheMix) {
  Products products{{"enamel", product("enamel", {{Litres(1), Money(45)}})}};
  products["enamel"].two_part = finish::TwoPart{3, 1, Hours(0)};
  const auto rows = purchase(std::vector{need("enamel", 1.6)}, products, {});
  ASSERT_EQ(rows.size(), 2U);
  EXPECT_EQ(rows[0].part, "base");
  EXPECT_EQ(rows[1].part, "hardener");
  EXPECT_NEAR(rows[0].need.value(), 1.2, 1e-12);
  EXPECT_NEAR(rows[1].need.value(), 0.4, 1e-12);
  EXPECT_EQ(rows[0].buy.at(0).size, Litres(0.75));
  EXPECT_EQ(rows[1].buy.at(0).size, Litres(0.25));
  EXPECT_EQ(rows[1].buy.at(0).count, 2);
  EXPECT_EQ(rows[0].cost, Money(90));
  EXPECT_EQ(rows[1].cost, Money(0));
  EXPECT_EQ(rows[1].buy.at(0).price, Money(0));
  for (const job::Purchase& row : rows) expect_balanced(row);
}

TEST(Purchase, SetsWithoutAPriceHaveNoCost) {
  Products products{{"enamel", product("enamel", {{Litres(1), {}}})}};
  products["enamel"].two_part = finish::TwoPart{3, 1, Hours(0)};
  for (const job::Purchase& row : purchase(std::vector{need("enamel", 1.6)}, products, {})) EXPECT_FALSE(row.cost.has_value()) << row.part;
}

RC_GTEST_PROP(Purchase, AlwaysCoversTheNeed, ()) {
  const auto ml = rc::gen::map(rc::gen::inRange(1, 5000), [](int n) { return n * 0.001; });
  Products products{{"clear", product("clear", {{Litres(*ml), {}}, {Litres(0.946352946), {}}})}};
  if (*rc::gen::arbitrary<bool>()) products["clear"].two_part = finish::TwoPart{double(*rc::gen::inRange(1, 10)), 1, Hours(0)};
  shop::Shop shop;
  shop.stock = {{"clear", Litres(*ml), {}, {}, {}}};
  for (const job::Purchase& row : purchase(std::vector{need("clear", *ml, *rc::gen::inRange(0, 5))}, products, shop)) {
    RC_ASSERT(row.left_over >= Litres(0));
    RC_ASSERT(std::abs(row.on_hand.value() + bought(row) - row.need.value() - row.left_over.value()) < 1e-9);
  }
}

}  // namespace
}  // namespace coatday::planner
