#include <gtest/gtest.h>

#include "shop/shop.h"

namespace coatday::shop {
namespace {

constexpr LocalDay day(int d) { return LocalDay(date::year(2027) / 1 / d); }
constexpr Hours week{7 * 24.0};

double litres(const StockItem& item, LocalDay on, std::optional<Hours> keeps) {
  Shop shop;
  shop.stock = {item};
  return usable_stock(shop, "clear", on, keeps).value();
}

TEST(UsableStock, AddsUpOneProduct) {
  Shop shop;
  shop.stock = {{"clear", Litres(0.5), {}, {}, {}}, {"primer", Litres(2), {}, {}, {}}, {"clear", Litres(0.25), {}, {}, {}}};
  EXPECT_DOUBLE_EQ(usable_stock(shop, "clear", day(1), week).value(), 0.75);
  EXPECT_DOUBLE_EQ(usable_stock(shop, "wax", day(1), week).value(), 0);
}

TEST(UsableStock, IsGoodUntilItsDateAndOnIt) {
  const StockItem item{"clear", Litres(1), {}, day(10), {}};
  EXPECT_EQ(litres(item, day(10), {}), 1);
  EXPECT_EQ(litres(item, day(11), {}), 0);
}

TEST(UsableStock, KeepsSoLongOnceOpened) {
  const StockItem item{"clear", Litres(1), day(3), {}, {}};
  EXPECT_EQ(litres(item, day(10), week), 1);
  EXPECT_EQ(litres(item, day(11), week), 0);
  EXPECT_EQ(litres(item, day(11), {}), 1);
}

TEST(UsableStock, UnopenedKeepsWhateverTheOpenedLifeIs) { EXPECT_EQ(litres({"clear", Litres(1), {}, {}, {}}, day(31), Hours(1)), 1); }

TEST(UsableStock, TheEarlierEndCounts) {
  EXPECT_EQ(litres({"clear", Litres(1), day(1), day(20), {}}, day(12), week), 0);
  EXPECT_EQ(litres({"clear", Litres(1), day(9), day(10), {}}, day(12), week), 0);
}

}  // namespace
}  // namespace coatday::shop
