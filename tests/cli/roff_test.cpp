#include "cli/roff.h"

#include <gtest/gtest.h>

namespace coatday::cli::roff {
namespace {

TEST(Roff, NothingSteersTheFormatter) {
  EXPECT_EQ(prose(".SH no title"), "\\&.SH no title");
  EXPECT_EQ(prose("'quoted' at the start"), "\\&'quoted' at the start");
  EXPECT_EQ(prose("a\\b"), "a\\eb");
}

TEST(Roff, HyphensStayWhatTheyAre) {
  EXPECT_EQ(prose("half-hour with --from"), "half-hour with \\-\\-from");
  EXPECT_EQ(literal("what-if --set 'a'"), "what\\-if \\-\\-set \\(aqa\\(aq");
}

TEST(Roff, WhatIsTypedIsBold) {
  EXPECT_EQ(prose("say `units: us` or `--force`."), "say \\fBunits: us\\fR or \\fB\\-\\-force\\fR.");
  EXPECT_EQ(prose("`-o`"), "\\fB\\-o\\fR");
}

TEST(Roff, SignsHaveNames) { EXPECT_EQ(prose("21\u00a0°C, 120 µm"), "21\\ \\(deC, 120 \\(mcm"); }

}  // namespace
}  // namespace coatday::cli::roff
