#include "quantity/nearest.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <vector>

namespace coatday {
namespace {

const std::vector<std::string> finishes{"sealer", "topcoat", "stain", "oil"};

TEST(NearestWord, ForgivesOneSlip) {
  EXPECT_EQ(nearest_word("sealar", finishes), "sealer");     // changed
  EXPECT_EQ(nearest_word("sealr", finishes), "sealer");      // left out
  EXPECT_EQ(nearest_word("topcoatt", finishes), "topcoat");  // put in
  EXPECT_EQ(nearest_word("satin", finishes), "stain");       // two letters swapped, which counts as one slip
  EXPECT_EQ(nearest_word("OIL", finishes), "oil");
}

TEST(NearestWord, DoesNotGuessWildly) {
  EXPECT_EQ(nearest_word("lacquer", finishes), std::nullopt);
  EXPECT_EQ(nearest_word("", finishes), std::nullopt);
  EXPECT_EQ(nearest_word("x", std::vector<std::string>{"m", "h"}), std::nullopt);  // nothing in common
  EXPECT_EQ(nearest_word(std::string(100'000, 'a'), finishes), std::nullopt);
  EXPECT_EQ(nearest_word("oil", {}), std::nullopt);
}

TEST(NearestWord, TakesTheNearestThenTheFirst) {
  const std::vector<std::string> words{"coat", "coats", "boats"};
  EXPECT_EQ(nearest_word("coats", words), "coats");
  EXPECT_EQ(nearest_word("boat", words), "coat");
}

RC_GTEST_PROP(NearestWord, AWordIsNearestToItself, ()) {
  const auto words = *rc::gen::nonEmpty(
      rc::gen::container<std::vector<std::string>>(rc::gen::nonEmpty(rc::gen::container<std::string>(rc::gen::inRange('a', 'z')))));
  const std::string word = *rc::gen::elementOf(words);
  RC_PRE(word.size() <= 64U);
  RC_ASSERT(nearest_word(word, words) == word);
}

TEST(NearestWords, RankedHoweverFar) {
  const std::vector<std::string> words{"maple", "ash", "oak", "ash"};
  EXPECT_EQ(nearest_words("aash", words, 2), (std::vector<std::string>{"ash", "oak"}));
  EXPECT_EQ(nearest_words("", words, 9), (std::vector<std::string>{"ash", "oak", "maple"}));
  EXPECT_TRUE(nearest_words("x", {}, 3).empty());
}

}  // namespace
}  // namespace coatday
