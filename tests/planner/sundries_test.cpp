#include "planner/buy/sundries.h"

#include <gtest/gtest.h>

namespace coatday::planner {
namespace {

TEST(Abrasives, AreCountedInWholeSheetsByGritCoarseFirst) {
  const std::vector<DryWork> works{{180, SquareMetres(1.2), false}, {120, SquareMetres(2.0), false}, {180, SquareMetres(0.9), false}};
  const auto all = abrasives(works, Units::metric);
  ASSERT_EQ(all.size(), 2U);
  EXPECT_EQ(all[0].name, "abrasive, grit 120");
  EXPECT_EQ(all[0].count, 2);
  EXPECT_EQ(all[1].count, 3);
}

TEST(Abrasives, LastLongerBetweenCoatsAndWhenFine) {
  EXPECT_EQ(abrasives(std::vector{DryWork{180, SquareMetres(3), true}}, Units::metric).at(0).count, 2);
  EXPECT_EQ(abrasives(std::vector{DryWork{220, SquareMetres(3), false}}, Units::metric).at(0).count, 2);
  EXPECT_EQ(abrasives(std::vector{DryWork{180, SquareMetres(3), false}}, Units::metric).at(0).count, 3);
}

TEST(Abrasives, ManySmallAreasThatFillASheetTakeOne) {
  EXPECT_EQ(abrasives(std::vector(10, DryWork{120, SquareMetres(0.1), false}), Units::metric).at(0).count, 1);
}

TEST(Abrasives, AreToldInTheUnitsOfTheShop) {
  const std::vector<DryWork> works{{120, SquareMetres(2), false}};
  EXPECT_EQ(abrasives(works, Units::metric).at(0).unit, "sheets 230 x 280 mm");
  EXPECT_EQ(abrasives(works, Units::us).at(0).unit, "sheets 9 x 11 in");
  EXPECT_EQ(abrasives(works, Units::us).at(0).source,
            "one sheet for 10.8 ft² of wood, for 16.1 ft² above grit 180 or between coats: common practice, no source");
}

TEST(Rags, AreTwoForEachWipedCoat) {
  EXPECT_EQ(rags(3)->count, 6);
  EXPECT_FALSE(rags(0).has_value());
}

TEST(Points, AreMoreUnderLongItems) {
  const std::vector<OnPoints> uses{{Metres(1.5), 2}, {Metres(1.6), 3}};
  EXPECT_EQ(points(uses, Units::us)->count, 2 * 4 + 3 * 6);
  EXPECT_FALSE(points({}, Units::us).has_value());
}

TEST(Sundries, SayWhereTheirRuleComesFrom) {
  const std::string words = "common practice, no source";
  EXPECT_NE(abrasives(std::vector{DryWork{120, SquareMetres(1), false}}, Units::metric).at(0).source.find(words), std::string::npos);
  EXPECT_NE(rags(1)->source.find(words), std::string::npos);
  EXPECT_NE(points(std::vector{OnPoints{Metres(1), 1}}, Units::us)->source.find(words), std::string::npos);
}

}  // namespace
}  // namespace coatday::planner
