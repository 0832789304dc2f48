// The typical years beside the samples; their monthly means are checked with the published values.

#include <gtest/gtest.h>
#include <algorithm>

#include "climate/outdoor.h"
#include "climate/psychrometrics.h"
#include "tests/climate/year.h"

namespace coatday::climate {
namespace {

using namespace date::literals;

OutdoorYear sample(const std::string& file) { return OutdoorYear::parse(sample_text(file), file).value(); }

/// The same year in both forms: a table of the same station, in whole hectopascals.
TEST(SampleYears, BothFormsAgree) {
  const OutdoorYear table = sample("chicago.csv"), epw = sample("chicago.epw");
  const Instant from = date::sys_days(2027_y / 1 / 1);
  for (Instant t = from; t < from + std::chrono::hours(24 * 365); t += Minutes(30)) {
    ASSERT_NEAR(table.at(t).temperature.value(), epw.at(t).temperature.value(), 1e-9);
    ASSERT_NEAR(table.at(t).humidity.value(), epw.at(t).humidity.value(), 1e-9);
  }
  EXPECT_NEAR(table.pressure() / epw.pressure(), 1, 1e-3);
  EXPECT_TRUE(epw.notes().empty());
}

TEST(SampleYears, TheNoticeTravelsWithTheData) {
  EXPECT_NE(sample_text("NOTICE.txt").find("provided that this entire notice appears in all\ncopies of the Data"), std::string::npos);
  for (const auto* file : {"chicago.csv", "new-orleans.csv", "seattle.csv"})
    EXPECT_NE(sample_text(file).find("NREL/TP-581-43156"), std::string::npos);
}

}  // namespace
}  // namespace coatday::climate
