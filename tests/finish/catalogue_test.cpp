#include "finish/catalogue.h"

#include <gtest/gtest.h>

namespace coatday::finish {
namespace {

OverRule rule(std::string upper, std::string under, std::string source) {
  OverRule r;
  r.upper = std::move(upper);
  r.under = std::move(under);
  r.source = std::move(source);
  return r;
}

std::string found(const Catalogue& c, const std::string& upper, const std::string& under) {
  const OverRule* r = c.over_rule(upper, under);
  return r == nullptr ? "none" : r->source;
}

TEST(OverRule, TheMostSpecificHolds) {
  Catalogue c;
  c.over = {rule("lacquer", "oil", "both"), rule("lacquer", "any", "upper"), rule("any", "oil", "under"), rule("any", "any", "anything")};
  EXPECT_EQ(found(c, "lacquer", "oil"), "both");
  EXPECT_EQ(found(c, "lacquer", "stain"), "upper");
  EXPECT_EQ(found(c, "varnish", "oil"), "under");
  EXPECT_EQ(found(c, "varnish", "stain"), "anything");
}

TEST(OverRule, NamingTheUpperGoesBeforeNamingTheUnder) {
  Catalogue c;
  c.over = {rule("lacquer", "any", "upper"), rule("any", "oil", "under")};
  EXPECT_EQ(found(c, "lacquer", "oil"), "upper");
}

TEST(OverRule, TheLaterOfEqualsHolds) {
  Catalogue c;
  c.over = {rule("lacquer", "oil", "shipped"), rule("any", "any", "general"), rule("lacquer", "oil", "own")};
  EXPECT_EQ(found(c, "lacquer", "oil"), "own");
}

TEST(OverRule, NobodyMayHaveSaid) {
  Catalogue c;
  c.over = {rule("lacquer", "oil", "both")};
  EXPECT_EQ(found(c, "oil", "lacquer"), "none");
  EXPECT_EQ(found({}, "oil", "lacquer"), "none");
}

TEST(Catalogue, FindsByItsOwnName) {
  Catalogue c;
  c.products["oil"].name = "an oil";
  c.schedules["three-coats"].name = "three coats";
  EXPECT_EQ(c.product("oil")->name, "an oil");
  EXPECT_EQ(c.product("wax"), nullptr);
  EXPECT_EQ(c.schedule("three-coats")->name, "three coats");
  EXPECT_EQ(c.schedule("oil"), nullptr);
}

}  // namespace
}  // namespace coatday::finish
