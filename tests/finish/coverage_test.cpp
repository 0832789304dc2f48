#include "finish/coverage.h"

#include <gtest/gtest.h>

#include "tests/finish/samples.h"

namespace coatday::finish {
namespace {

Product clear() {
  Product p = test::product(Mechanism::water);
  p.stated_spreading_rate = SquareMetresPerLitre(10);
  p.first_coat_factor = 1.5;
  p.end_grain_factor = 2;
  return p;
}

TEST(Coverage, NeedIsAreaOverSpreadingRateAndTransfer) {
  const std::vector<Surface> faces{{SquareMetres(3)}, {SquareMetres(0.5)}};
  EXPECT_NEAR(need(clear(), Method::air_spray, faces).value(), 3.5 / (10 * 0.25), 1e-12);
  EXPECT_EQ(need(clear(), Method::brush, {}), Litres(0));
}

TEST(Coverage, BareWoodTakesMoreAndItsEndGrainMost) {
  std::vector<Surface> faces{{SquareMetres(3)}, {SquareMetres(0.5), true}};
  const double efficiency = transfer(Method::brush).efficiency;
  EXPECT_NEAR(need(clear(), Method::brush, faces).value(), 3.5 / (10 * efficiency), 1e-12);
  for (Surface& face : faces) face.bare = true;
  EXPECT_NEAR(need(clear(), Method::brush, faces).value(), (3 * 1.5 + 0.5 * 1.5 * 2) / (10 * efficiency), 1e-12);
}

TEST(Coverage, FilmTakesThePlaceOfAStatedSpreadingRate) {
  Product p = clear();
  p.stated_spreading_rate.reset();
  p.volume_solids = 0.4;
  p.dry_film = Micrometres(40);
  EXPECT_NEAR(p.spreading_rate().value(), 10, 1e-12);
}

TEST(Coverage, ThinnerThickensTheWetFilmOnly) {
  EXPECT_NEAR(wet_film(Micrometres(40), 0.4, 0).value(), 100, 1e-12);
  EXPECT_NEAR(wet_film(Micrometres(40), 0.4, 0.25).value(), 125, 1e-12);
}

TEST(Coverage, EveryMethodHasAShareBelowOneAndItsSource) {
  for (std::size_t m = 0; m < words<Method>().size(); ++m) {
    const Transfer t = transfer(static_cast<Method>(m));
    EXPECT_GT(t.efficiency, 0);
    EXPECT_LT(t.efficiency, 1);
    EXPECT_FALSE(t.source.empty());
  }
  EXPECT_EQ(transfer(Method::brush).source, "common practice, no source");
  EXPECT_EQ(transfer(Method::aerosol).source, "common practice, no source");
}

}  // namespace
}  // namespace coatday::finish
