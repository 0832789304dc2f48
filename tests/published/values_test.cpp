// Every row of every file has a source, and the reader refuses one that has not.

#include "tests/published/values.h"

#include <stdexcept>

namespace coatday::published {
namespace {

std::string with_row(const std::string& row) { return "quantity,inputs,expected,unit,tolerance,source,verified\n" + row + "\n"; }

std::string refusal(const std::string& csv) {
  try {
    (void)parse_values(csv, "x.csv");
  } catch (const std::runtime_error& e) {
    return e.what();
  }
  return "";
}

TEST(PublishedValues, EveryFileReads) {
  ASSERT_FALSE(value_files().empty());
  for (const auto& file : value_files()) EXPECT_NO_THROW((void)read_values(file)) << file;
}

TEST(PublishedValues, ReadsARow) {
  const auto values = parse_values(with_row(R"(q,a_C=1.5 b=oak,200,mm,1 %,"A ""book"", table 1",seen)"), "x.csv");
  ASSERT_EQ(values.size(), 1u);
  EXPECT_EQ(values[0].place, "x.csv:2");
  EXPECT_EQ(values[0].number("a_C"), 1.5);
  EXPECT_EQ(values[0].text("b"), "oak");
  EXPECT_EQ(values[0].tolerance, 2.0);
  EXPECT_EQ(values[0].source, "A \"book\", table 1");
  EXPECT_EQ(values[0].standing, Standing::seen);
  EXPECT_THROW((void)values[0].number("c"), std::runtime_error);
}

TEST(PublishedValues, RefusesARowWithoutASource) {
  EXPECT_EQ(refusal(with_row("q,a=1,2,mm,0.1,,seen")), "x.csv:2: no source");
  EXPECT_EQ(refusal(with_row("q,a=1,2,mm,0.1, ,seen")), "x.csv:2: no source");
}

TEST(PublishedValues, RefusesARowThatDoesNotSayHowItWasVerified) {
  EXPECT_EQ(refusal(with_row("q,a=1,2,mm,0.1,A book,")), "x.csv:2: 'verified' must begin with 'seen', 'from memory' or 'computed here'");
}

TEST(PublishedValues, RefusesWhatIsNotANumber) {
  EXPECT_EQ(refusal(with_row("q,a=1,nan,mm,0.1,A book,seen")), "x.csv:2: expected value is not a number: 'nan'");
  EXPECT_EQ(refusal(with_row("q,a=1,2,mm,,A book,seen")), "x.csv:2: tolerance is not a number: ''");
  EXPECT_EQ(refusal(with_row("q,a=1,2,mm,0,A book,seen")), "x.csv:2: tolerance must be > 0");
}

TEST(PublishedValues, RefusesABadShape) {
  EXPECT_EQ(refusal("quantity,expected\n"), "x.csv:1: the first line must be quantity,inputs,expected,unit,tolerance,source,verified");
  EXPECT_EQ(refusal(with_row("q,a=1,2,mm,0.1,A book")), "x.csv:2: 6 fields; expected 7");
  EXPECT_EQ(refusal(with_row("q,a,2,mm,0.1,A book,seen")), "x.csv:2: input is not name=value: 'a'");
  EXPECT_EQ(refusal(with_row("q,a=1 a=2,2,mm,0.1,A book,seen")), "x.csv:2: input given twice: 'a=2'");
  EXPECT_EQ(refusal("quantity,inputs,expected,unit,tolerance,source,verified\n"), "x.csv: no rows");
}

}  // namespace
}  // namespace coatday::published
