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
  const Month mean = month_of(sample(expected.file), expected.month, -6);
  EXPECT_NEAR(mean.temperature, expected.temperature_C, 0.05);
  EXPECT_NEAR(100 * mean.humidity, expected.humidity_pct, 0.5);
  EXPECT_NEAR(100 * mean.warmed, expected.warmed_pct, 0.5);
}

INSTANTIATE_TEST_SUITE_P(Files, SampleYears,
                         testing::Values(Means{"chicago.csv", 1, -4.6, 71, 15}, Means{"chicago.csv", 4, 10.0, 69, 36},
                                         Means{"chicago.csv", 7, 24.1, 74, 71}, Means{"chicago.csv", 10, 11.0, 69, 38},
                                         Means{"new-orleans.csv", 1, 9.9, 73, 41}, Means{"new-orleans.csv", 4, 20.8, 76, 68},
                                         Means{"new-orleans.csv", 7, 27.6, 80, 80}, Means{"new-orleans.csv", 10, 20.1, 77, 69}));

TEST(SampleYears, TheNoticeTravelsWithTheData) {
  EXPECT_NE(sample_text("NOTICE.txt").find("provided that this entire notice appears in all\ncopies of the Data"), std::string::npos);
  for (const auto* file : {"chicago.csv", "new-orleans.csv"}) EXPECT_NE(sample_text(file).find("NREL/TP-581-43156"), std::string::npos);
}

}  // namespace
}  // namespace coatday::climate
