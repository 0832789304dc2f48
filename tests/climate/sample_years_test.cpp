// The typical years beside the samples. Monthly means were computed from the files when they were made: they check that a file was read
// as it was meant, hour by hour, and are not verification of the weather.

#include <gtest/gtest.h>
#include <algorithm>

#include "climate/outdoor.h"
#include "climate/psychrometrics.h"
#include "tests/climate/year.h"

namespace coatday::climate {
namespace {

using namespace date::literals;

struct Means {
  const char* file;
  int utc_offset_h;
  unsigned month;
  double temperature_C, humidity_pct;
  double warmed_pct;  // mean relative humidity if the air is warmed to 20 °C where it is colder
};

struct Month {
  double temperature = 0, humidity = 0, warmed = 0;  // means over the hours of the file
};

Month month_of(const OutdoorYear& year, unsigned month, int utc_offset_h) {
  const auto first = 2027_y / date::month(month) / 1;
  const std::chrono::hours offset(utc_offset_h);
  const Instant from = date::sys_days(first) - offset, until = date::sys_days(first + date::months(1)) - offset;
  const double hours = static_cast<double>((until - from) / std::chrono::hours(1));
  Month mean;
  for (Instant t = from + Minutes(30); t < until; t += std::chrono::hours(1)) {
    const Air air = year.at(t);
    mean.temperature += air.temperature.value() / hours;
    mean.humidity += air.humidity.value() / hours;
    mean.warmed += relative_humidity(std::max(air.temperature, Celsius(20)), humidity_ratio(air)).value() / hours;
  }
  return mean;
}

OutdoorYear sample(const std::string& file) { return OutdoorYear::parse(sample_text(file), file).value(); }

class SampleYears : public testing::TestWithParam<Means> {};

TEST_P(SampleYears, MonthlyMeans) {
  const Means expected = GetParam();
  const Month mean = month_of(sample(expected.file), expected.month, expected.utc_offset_h);
  EXPECT_NEAR(mean.temperature, expected.temperature_C, 0.05);
  EXPECT_NEAR(100 * mean.humidity, expected.humidity_pct, 0.5);
  EXPECT_NEAR(100 * mean.warmed, expected.warmed_pct, 0.6);  // whole percents, and computed with a formula of saturation that is not known
}

INSTANTIATE_TEST_SUITE_P(Files, SampleYears,
                         testing::Values(Means{"chicago.csv", -6, 1, -4.6, 71, 15}, Means{"chicago.csv", -6, 4, 10.0, 69, 36},
                                         Means{"chicago.csv", -6, 7, 24.1, 74, 71}, Means{"chicago.csv", -6, 10, 11.0, 69, 38},
                                         Means{"chicago.epw", -6, 1, -4.6, 71, 15}, Means{"chicago.epw", -6, 4, 10.0, 69, 36},
                                         Means{"chicago.epw", -6, 7, 24.1, 74, 71}, Means{"chicago.epw", -6, 10, 11.0, 69, 38},
                                         Means{"denver.epw", -7, 1, 0.8, 47, 11}, Means{"denver.epw", -7, 4, 5.8, 62, 23},
                                         Means{"denver.epw", -7, 7, 22.3, 50, 44}, Means{"denver.epw", -7, 10, 10.0, 61, 29},
                                         Means{"new-orleans.csv", -6, 1, 9.9, 73, 41}, Means{"new-orleans.csv", -6, 4, 20.8, 76, 68},
                                         Means{"new-orleans.csv", -6, 7, 27.6, 80, 80}, Means{"new-orleans.csv", -6, 10, 20.1, 77, 69},
                                         Means{"seattle.csv", -8, 1, 4.5, 81, 30}, Means{"seattle.csv", -8, 4, 10.9, 72, 39},
                                         Means{"seattle.csv", -8, 7, 17.7, 65, 52}, Means{"seattle.csv", -8, 10, 11.4, 77, 44}));

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
