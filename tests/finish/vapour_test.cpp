#include "finish/vapour.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace coatday::finish {
namespace {

Product product(Base base, double voc) {
  Product p;
  p.base = base;
  p.voc = GramsPerLitre(voc);
  return p;
}

TEST(SolventIn, IsVocOverDensityAndTheThinner) {
  Product p = product(Base::lacquer_thinner, 680);
  p.solvent = *solvent("toluene");
  EXPECT_NEAR(solvent_in(p, Litres(2), 0).value(), 2 * 680.0 / 867, 1e-12);
  EXPECT_NEAR(solvent_in(p, Litres(2), 0.1).value(), 2 * (680.0 / 867 + 0.1), 1e-12);
}

TEST(SolventIn, WaterThinsNoSolvent) {
  const Product p = product(Base::water, 275);
  EXPECT_EQ(solvent_in(p, Litres(1), 0.1), solvent_in(p, Litres(1), 0));
  EXPECT_GT(solvent_in(p, Litres(1), 0), Litres(0));
}

TEST(SolventIn, IsNothingWithoutVocAndThinner) { EXPECT_EQ(solvent_in(product(Base::none, 0), Litres(1), 0), Litres(0)); }

TEST(SolventIn, CountsWhatVocLeavesOut) {
  Product p = product(Base::lacquer_thinner, 275);
  p.solvent = *solvent("acetone");
  p.solvent_content = GramsPerLitre(600);
  EXPECT_NEAR(solvent_in(p, Litres(1), 0).value(), 600.0 / 791, 1e-12);
  p.solvent_content = GramsPerLitre(100);  // less than the VOC cannot be all that burns
  EXPECT_NEAR(solvent_in(p, Litres(1), 0).value(), 275.0 / 791, 1e-12);
}

TEST(SolventOf, IsWhatNeedsMostAirOfThoseUsualInTheBase) {
  EXPECT_EQ(solvent_of(product(Base::white_spirit, 1)).id, "vm-p-naphtha");
  EXPECT_EQ(solvent_of(product(Base::alcohol, 1)).id, "isopropyl-alcohol");
  EXPECT_EQ(solvent_of(product(Base::lacquer_thinner, 1)).id, "n-butyl-alcohol");
  EXPECT_EQ(solvent_of(product(Base::water, 1)).id, "2-butoxyethanol");
}

TEST(SolventTable, HasNoIdTwice) {
  for (const Solvent& one : solvents()) EXPECT_EQ(solvent(one.id), &one) << one.id;
  EXPECT_EQ(solvent("tolune"), nullptr);
}

RC_GTEST_PROP(DilutionAir, IsLessForAHigherShareAndMoreForMoreSolvent, ()) {
  const Solvent& one = solvents()[*rc::gen::inRange<std::size_t>(0, solvents().size())];
  const double low = *rc::gen::inRange(1, 250) / 1000.0, high = low + *rc::gen::inRange(1, 100) / 1000.0;
  RC_ASSERT(dilution_air(one, high) < dilution_air(one, low));
  const Litres some(*rc::gen::inRange(1, 1000) / 100.0), more = some + Litres(0.01);
  RC_ASSERT(some * dilution_air(one, low) < more * dilution_air(one, low));
}

}  // namespace
}  // namespace coatday::finish
