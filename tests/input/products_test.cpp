// Products on top of each other, sources, and laws from rows.
#include <gtest/gtest.h>

#include "finish/law.h"
#include "tests/input/folder.h"

namespace coatday::input {
namespace {

using finish::Stage;

finish::Catalogue catalogue(const std::string& own, const std::string& more = "products: {}") {
  Opening opened = open_catalogue({"own.yaml", "more.yaml"}, "schedules", from({{"own.yaml", own}, {"more.yaml", more}}));
  EXPECT_EQ(printed(opened), "");
  return opened ? std::move(opened->job.catalogue) : finish::Catalogue{};
}

TEST(Like, CopiesEverythingThatIsNotGiven) {
  const auto all = catalogue("products:\n  ours: {name: ours, like: shellac, times: {recoat: 3 h}}\n");
  const finish::Product& p = all.products.at("ours");
  EXPECT_EQ(p.id, "ours");
  EXPECT_EQ(p.family, "shellac");
  EXPECT_EQ(p.base, finish::Base::alcohol);
  EXPECT_EQ(p.reference().hours[Stage::handle], Hours(1));
  EXPECT_EQ(p.reference().hours[Stage::recoat], Hours(3));
  EXPECT_EQ(p.sources.at("times.handle"), "TM 43-0139 par. 2-23");
  EXPECT_FALSE(p.sources.contains("times.recoat"));  // another value, for which nobody has named a source
  EXPECT_EQ(p.where.file, "own.yaml");
}

TEST(Like, WorksFromAnyOrderOfFiles) {
  const auto all = catalogue("products:\n  a: {like: b, name: a}\n",
                             "products:\n  b: {like: c, name: b, voc: 100 g/l}\n  c: {like: shellac, name: c}\n");
  EXPECT_EQ(all.products.at("a").voc, GramsPerLitre(100));
  EXPECT_EQ(all.products.at("a").family, "shellac");
}

TEST(Like, IsTheProductItselfWhereALaterFileHasTheSameId) {
  const auto all =
      catalogue("products:\n  shellac: {times: {recoat: 3 h}}\n", "products:\n  shellac: {like: shellac, times: {handle: 90 min}}\n");
  const finish::Product& p = all.products.at("shellac");
  EXPECT_EQ(p.reference().hours[Stage::recoat], Hours(3));
  EXPECT_EQ(p.reference().hours[Stage::handle], Hours(1.5));
  EXPECT_EQ(p.reference().hours[Stage::full_cure], Hours(24));
}

TEST(Products, HaveALimitSinceEachIsCopied) {
  std::string own = "products:\n";
  for (int i = 0; i < 2000; ++i) own += "  p" + std::to_string(i) + ": {like: p" + std::to_string(i + 1) + "}\n";
  const Opening opened = open_catalogue({"own.yaml"}, "schedules", from({{"own.yaml", own}}));
  EXPECT_NE(printed(opened).find("more than 2000 products"), std::string::npos);
}

TEST(Sources, AreKeysOrWords) {
  const auto all = catalogue(
      "sources: {l: the label}\nproducts:\n  shellac: {voc: [90 g/l, l], hazards: [[skin, vapour], by ear], stand: [1 min, l], limits: "
      "{coldest: [12 °C, l]}}\n");
  const finish::Product& p = all.products.at("shellac");
  EXPECT_EQ(p.sources.at("voc"), "the label");
  EXPECT_EQ(p.sources.at("limits.coldest"), "the label");
  EXPECT_EQ(p.sources.at("hazards"), "by ear");
  EXPECT_EQ(p.hazards, (std::vector{finish::Hazard::skin, finish::Hazard::vapour}));
}

TEST(Hazards, OfTwoAreAListAndNoSource) {
  const auto all = catalogue("products:\n  shellac: {hazards: [skin, vapour]}\n");
  EXPECT_EQ(all.products.at("shellac").hazards.size(), 2U);
}

TEST(Rows, FitTheClock) {
  const auto all = catalogue("products:\n  wiping-oil:\n    times at:\n      - {air: 13 °C 50 %, recoat: 24 h, tack free: 16 h}\n");
  const finish::Product& p = all.products.at("wiping-oil");
  ASSERT_EQ(p.rows.size(), 2U);
  EXPECT_NEAR(p.rows[1].air.temperature.value(), 13, 1e-9);
  EXPECT_FALSE(p.cure_law);
  if (!finish::default_law(p.mechanism, finish::Clock::drying)) return;
  ASSERT_TRUE(p.drying_law);
  // Twice as slow 10 K colder: R ln 2 / (1/286.15 - 1/296.15), the Arrhenius equation.
  EXPECT_NEAR(p.drying_law->activation.value(), 0.0083144626 * 0.693147181 / (1 / 286.15 - 1 / 296.15), 0.1);
}

TEST(Rows, EndWhereTheLabelHasTimesOfItsOwn) {
  const std::string base = "products:\n  a: {name: a, like: wiping-oil, times at: [{air: 13 °C 50 %, recoat: 24 h}]}\n";
  EXPECT_EQ(catalogue(base + "  b: {name: b, like: a}\n").products.at("b").rows.size(), 2U);
  EXPECT_EQ(catalogue(base + "  b: {name: b, like: a, times: {recoat: 10 h}}\n").products.at("b").rows.size(), 1U);
}

TEST(Laws, OverrideTheClassAndTheFit) {
  const auto all = catalogue(
      "products:\n  wiping-oil:\n    times at: [{air: 13 °C 50 %, pack: 10 days}]\n    laws: {cure: {activation: 60 kJ/mol, no credit "
      "below: 8 °C}}\n");
  const auto& law = all.products.at("wiping-oil").cure_law;
  ASSERT_TRUE(law);
  EXPECT_EQ(law->activation, KilojoulesPerMole(60));
  EXPECT_EQ(law->no_credit_below, Celsius(8));
}

TEST(Laws, AreForgottenWithTheMechanism) {
  const auto all = catalogue(
      "products:\n  a: {name: a, like: wiping-oil, laws: {cure: {activation: 60 kJ/mol}}}\n  b: {name: b, like: a, mechanism: epoxy}\n");
  EXPECT_TRUE(all.products.at("a").cure_law);
  EXPECT_FALSE(all.products.at("b").cure_law);
}

TEST(Coverage, ByFilmOverridesTheStatedRate) {
  const auto all = catalogue("products:\n  shellac: {coverage: {volume solids: 25 %, dry film: 25 um}}\n");
  // 10 VS% / DFT[um] = 10 x 25 / 25 (UFC 3-190-06 par. 2.1.5).
  EXPECT_NEAR(all.products.at("shellac").spreading_rate().value(), 10, 1e-9);
}

TEST(Schedules, OfALaterFileReplaceTheEarlier) {
  const auto all = catalogue(
      "schedules:\n  two-coats: {name: one coat, suits: wood, steps: [{step: c, kind: topcoat, product: water-clear, wait: [1 h, by "
      "ear]}]}\n");
  EXPECT_EQ(all.schedules.at("two-coats").steps.size(), 1U);
  EXPECT_EQ(all.schedules.at("two-coats").steps[0].source, "by ear");
}

TEST(Over, KeepsTheOrderOfFiles) {
  const auto all = catalogue("over:\n  - {upper: shellac, under: wiping-oil, verdict: longer wait, wait: [72 h, label]}\n");
  ASSERT_EQ(all.over.size(), 2U);
  EXPECT_EQ(all.over[1].verdict, finish::Verdict::longer_wait);
  EXPECT_EQ(all.over[1].wait, Hours(72));
  EXPECT_EQ(all.over[1].source, "label");
}

}  // namespace
}  // namespace coatday::input
