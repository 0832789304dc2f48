// What customers are told of each class of finish.
#include "report/sections/care.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace coatday::report {
namespace {

TEST(Care, OilTellsOfClothsThatCatchFire) {
  finish::Product oil;
  oil.role = finish::Role::oil;
  const auto words = care_text(oil);
  EXPECT_TRUE(std::any_of(words.begin(), words.end(), [](const std::string& w) {
    return w.starts_with("! ") && w.find("catch fire") != std::string::npos && w.find("Local rules") != std::string::npos;
  }));
}

TEST(Care, EveryClassHasItsWords) {
  for (const finish::Role role :
       {finish::Role::topcoat, finish::Role::oil, finish::Role::wax, finish::Role::enamel, finish::Role::primer, finish::Role::sealer}) {
    for (int m = 0; m <= static_cast<int>(finish::Mechanism::heat_cured); ++m) {
      finish::Product product;
      product.role = role;
      product.mechanism = static_cast<finish::Mechanism>(m);
      EXPECT_GE(care_text(product).size(), 2U);
    }
  }
}

}  // namespace
}  // namespace coatday::report
