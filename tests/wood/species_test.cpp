#include "wood/species.h"

#include <gtest/gtest.h>
#include <algorithm>
#include <set>
#include <string>

namespace coatday::wood {
namespace {

std::string id_of(std::string_view typed) {
  const Species* found = find_species(typed);
  return found ? std::string(found->id) : "unknown";
}

TEST(Species, IdsAreUniqueAndInKebabCase) {
  std::set<std::string_view> ids;
  for (const Species& s : all_species()) {
    EXPECT_TRUE(ids.insert(s.id).second) << s.id;
    EXPECT_TRUE(std::all_of(s.id.begin(), s.id.end(), [](char c) { return c == '-' || (c >= 'a' && c <= 'z'); })) << s.id;
    EXPECT_EQ(find_species(s.id), &s) << s.id;
  }
}

TEST(Species, WoodMovesMoreAlongTheRingsThanAcross) {
  for (const Species& s : all_species()) {
    EXPECT_GT(s.radial, 0.0005) << s.id;
    EXPECT_GT(s.tangential, s.radial) << s.id;
    EXPECT_LT(s.tangential, 0.005) << s.id;
  }
}

TEST(Species, ByNameInItsNaturalOrder) {
  EXPECT_EQ(id_of("black-walnut"), "walnut-black");
  EXPECT_EQ(id_of("sugar-maple"), "maple-sugar");
  EXPECT_EQ(id_of("eastern-white-pine"), "pine-eastern-white");
}

TEST(Species, ByTradeName) {
  EXPECT_EQ(id_of("walnut"), "walnut-black");
  EXPECT_EQ(id_of("cherry"), "cherry-black");
  EXPECT_EQ(id_of("hard-maple"), "maple-sugar");
  EXPECT_EQ(id_of("red-oak"), "oak-red-commercial");
  EXPECT_EQ(id_of("white-oak"), "oak-white-commercial");
  EXPECT_EQ(id_of("white-ash"), "ash-white");
  EXPECT_EQ(id_of("poplar"), "yellow-poplar");
  for (const auto* name :
       {"alder", "ash", "aspen", "basswood", "beech", "birch", "chestnut", "cypress", "douglas-fir", "eastern-redcedar", "hickory",
        "mahogany", "oak-red", "oak-white", "pecan", "soft-maple", "sycamore", "western-redcedar", "white-pine"})
    EXPECT_NE(find_species(name), nullptr) << name;
}

TEST(Species, UnknownNamesAreUnknown) {
  for (const auto* name : {"", "oak", "ironwood", "Walnut", "walnut-", "-walnut", "black", "walnut black"})
    EXPECT_EQ(find_species(name), nullptr) << name;
}

TEST(Species, Pores) {
  EXPECT_EQ(find_species("walnut-black")->pores, Pores::open);
  EXPECT_EQ(find_species("white-oak")->pores, Pores::open);
  EXPECT_EQ(find_species("hard-maple")->pores, Pores::closed);
  EXPECT_EQ(find_species("cherry")->pores, Pores::closed);
  EXPECT_EQ(find_species("white-pine")->pores, Pores::softwood);
}

}  // namespace
}  // namespace coatday::wood
