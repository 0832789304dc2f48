// What is written can be read back, and two ways of writing the same thing agree.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <string>

#include "quantity/text.h"

namespace coatday {
namespace {

int between(int low, int high) { return *rc::gen::inRange(low, high + 1); }

RC_GTEST_PROP(RoundTrip, LengthsInSixteenths, ()) {
  const int sixteenths = between(1, 16 * 240);
  const Metres length(sixteenths * 0.0254 / 16);
  const auto read = parse_length(format_length(length, Units::us));
  RC_ASSERT(read.has_value());
  RC_ASSERT(std::abs(read->value() - length.value()) < 1e-12);
}

RC_GTEST_PROP(RoundTrip, LengthsInMillimetres, ()) {
  const Metres length(between(1, 50'000) / 1000.0);
  RC_ASSERT(parse_length(format_length(length, Units::metric)) == length);
}

RC_GTEST_PROP(RoundTrip, AnyLengthComesBackWithinHalfASixteenth, ()) {
  const Metres length(between(1, 5'000'000) * 1e-5);
  RC_PRE(length >= Metres(0.001));
  const auto read = parse_length(format_length(length, Units::us));
  RC_ASSERT(read.has_value());
  RC_ASSERT(std::abs(read->value() - length.value()) <= 0.0254 / 32 + 1e-12);
}

RC_GTEST_PROP(RoundTrip, FeetAndInchesAreInches, ()) {
  const int feet = between(1, 100);
  const int inches = between(0, 11);
  const auto mixed = parse_length(std::to_string(feet) + " ft " + std::to_string(inches) + " in");
  const auto plain = parse_length(std::to_string(12 * feet + inches) + "\"");
  RC_ASSERT(mixed.has_value());
  RC_ASSERT(plain.has_value());
  RC_ASSERT(std::abs(mixed->value() - plain->value()) < 1e-13);
}

RC_GTEST_PROP(RoundTrip, Volumes, ()) {
  const Litres volume(between(10, 5'000'000) * 1e-3);
  for (const Units units : {Units::metric, Units::us}) {
    const auto read = parse_volume(format_volume(volume, units));
    RC_ASSERT(read.has_value());
    RC_ASSERT(std::abs(read->value() / volume.value() - 1) < 0.06);  // two figures at worst
  }
}

RC_GTEST_PROP(RoundTrip, AreasAndRates, ()) {
  const double size = between(1000, 1'000'000) * 1e-3;
  for (const Units units : {Units::metric, Units::us}) {
    const auto area = parse_area(format_area(SquareMetres(size), units));
    RC_ASSERT(area.has_value());
    RC_ASSERT(std::abs(area->value() - size) < 0.06 * size);
  }
  const auto rate = parse_spreading_rate(format_spreading_rate(SquareMetresPerLitre(size), Units::metric));
  RC_ASSERT(rate.has_value());
  RC_ASSERT(std::abs(rate->value() - size) <= 0.5 + 1e-9);
}

RC_GTEST_PROP(RoundTrip, Temperatures, ()) {
  const Celsius temperature(between(-59, 399));
  RC_ASSERT(parse_temperature(format_temperature(temperature, Units::metric)) == temperature);
  const auto read = parse_temperature(format_temperature(temperature, Units::us));
  RC_ASSERT(read.has_value());
  RC_ASSERT(std::abs(read->value() - temperature.value()) <= 0.5 / 1.8 + 1e-9);
}

RC_GTEST_PROP(RoundTrip, SpansBelowADayKeepTheirMinutes, ()) {
  const Minutes minutes(between(0, 24 * 60 - 1));
  const auto read = parse_duration(format_span(minutes));
  RC_ASSERT(read.has_value());
  RC_ASSERT(std::abs(read->count() - Hours(minutes).count()) < 1e-9);
}

RC_GTEST_PROP(RoundTrip, SpansAboveADayKeepTheirHours, ()) {
  const Hours hours(between(24, 2 * 365 * 24));
  RC_ASSERT(parse_duration(format_span(hours)) == hours);
}

RC_GTEST_PROP(RoundTrip, DatesAndClockTimes, ()) {
  const LocalTime time = LocalTime(LocalDay(date::year(2000) / 1 / 1)) + Minutes(between(0, 37 * 365 * 24 * 60));
  const year_month_day ymd(day_of(time));
  RC_PRE(static_cast<int>(ymd.year()) <= last_year);
  const std::string text = iso8601(Zone().to_instant(time), Zone());
  RC_ASSERT(parse_local_time(text.substr(0, 16)) == time);
  RC_ASSERT(parse_clock_time(clock_time(time)) == std::chrono::duration_cast<Minutes>(time - day_of(time)));
}

// No text may crash a parser or come back without an explanation.
RC_GTEST_PROP(Parsers, AnswerEveryText, (const std::string& noise)) {
  const std::string text = *rc::gen::element<std::string>("", "5 ft ", "2 ", "1/", "-", "2027-01-11 ") + noise;
  RC_ASSERT(parse_length(text) || !parse_length(text).error().empty());
  RC_ASSERT(parse_duration(text) || !parse_duration(text).error().empty());
  RC_ASSERT(parse_share(text) || !parse_share(text).error().empty());
  RC_ASSERT(parse_local_time(text) || !parse_local_time(text).error().empty());
}

}  // namespace
}  // namespace coatday
