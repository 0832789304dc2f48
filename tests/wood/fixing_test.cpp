#include "wood/fixing.h"

#include <gtest/gtest.h>

namespace coatday::wood {
namespace {

constexpr Season year{MoistureContent(0.08), MoistureContent(0.06), MoistureContent(0.11)};
constexpr double oak = 0.00369;
constexpr Metres shank{0.005};

Fixing round(double distance, Metres room) { return {Metres(distance), shank + room * 2, shank}; }

/// Wood Handbook eq. 13-2 by hand: 300 mm x 0.00369 x 3 % = 3.32 mm out, x 2 % = 2.21 mm in.
TEST(Fixing, NeedsWhatTheWoodMoves) {
  const Play needs = play(round(0.3, Metres(0.004)), oak, year).value();
  EXPECT_NEAR(needs.outwards.value(), 0.0033210, 1e-9);
  EXPECT_NEAR(needs.inwards.value(), 0.0022140, 1e-9);
  EXPECT_NEAR(needs.room.value(), 0.004, 1e-12);
  EXPECT_TRUE(needs.passes());
}

TEST(Fixing, SaysByHowMuchItFallsShort) {
  const Play needs = play(round(0.3, Metres(0.001)), oak, year).value();
  EXPECT_FALSE(needs.passes());
  EXPECT_NEAR(needs.short_by().value(), 0.002321, 1e-9);
}

/// The custom is enough near the fixed point, and not at the edge of a wide top.
TEST(Fixing, AnEighthAllRoundIsNoRule) {
  EXPECT_TRUE(play(round(0.15, customary_room), oak, year)->passes());
  EXPECT_FALSE(play(round(0.45, customary_room), oak, year)->passes());
}

TEST(Fixing, TheOpeningThatIsNeededPassesAndASmallerOneDoesNot) {
  Fixing fixing = round(0.4, Metres(0));
  fixing.opening = opening_needed(fixing, oak, year).value() + Metres(1e-9);
  EXPECT_TRUE(play(fixing, oak, year)->passes());
  fixing.opening -= Metres(1e-6);
  EXPECT_FALSE(play(fixing, oak, year)->passes());
}

TEST(Fixing, AtTheFixedPointNothingMoves) { EXPECT_TRUE(play(round(0, Metres(0)), oak, year)->passes()); }

TEST(Fixing, AShankThatDoesNotFitFails) { EXPECT_FALSE(play({Metres(0), Metres(0.004), shank}, oak, year)->passes()); }

TEST(Fixing, FixedDrierThanTheYearItNeedsRoomOutwardsAlone) {
  const Play needs = play(round(0.3, Metres(0.004)), oak, {MoistureContent(0.06), MoistureContent(0.07), MoistureContent(0.10)}).value();
  EXPECT_EQ(needs.inwards, Metres(0));
  EXPECT_GT(needs.outwards, Metres(0));
}

TEST(Fixing, OutsideTheCoefficientsItIsRefused) {
  EXPECT_FALSE(play(round(0.3, Metres(0.004)), oak, {MoistureContent(0.08), MoistureContent(0.05), MoistureContent(0.11)}).has_value());
  EXPECT_FALSE(
      opening_needed(round(0.3, Metres(0)), oak, {MoistureContent(0.08), MoistureContent(0.07), MoistureContent(0.15)}).has_value());
}

}  // namespace
}  // namespace coatday::wood
