// Summer time in America/Chicago, 2027. 15 U.S.C. 260a(a): from 2 o'clock on the second Sunday of March (14 March 2027) to 2 o'clock on the
// first Sunday of November (7 November 2027). Central standard time is UTC-6 (from memory: 15 U.S.C. 261).
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "quantity/time.h"

namespace coatday {
namespace {

using namespace std::chrono_literals;

Zone chicago() { return Zone::find("America/Chicago").value(); }

Instant utc(const char* text) { return Zone().to_instant(parse_local_time(text).value()); }
LocalTime local(const char* text) { return parse_local_time(text).value(); }

// A plan must mean the same elsewhere.
TEST(Zone, WhatOneMachineAloneMeansIsNone) {
  for (const char* name : {"localtime", "posixrules", "posix/America/Chicago", "right/America/Chicago", "Factory", "/etc/localtime",
                           "../zoneinfo/UTC", "tzdata.zi", "zone.tab", "iso3166.tab"})
    EXPECT_FALSE(Zone::find(name)) << name;
  EXPECT_EQ(Zone::find("localtime").error(),
            "unknown time zone 'localtime'; expected a name that means the same on every machine, such as America/Chicago or UTC");
  EXPECT_EQ(Zone::find("posix/America/Chicago").error(), "unknown time zone 'posix/America/Chicago'; did you mean 'America/Chicago'?");
}

TEST(Zone, DefaultIsUtc) {
  EXPECT_EQ(Zone().name(), "UTC");
  EXPECT_EQ(Zone().offset(utc("2027-07-01 12:00")), 0s);
  EXPECT_EQ(Zone::find("UTC")->name(), "UTC");
  EXPECT_EQ(Zone::find("Etc/UTC")->to_instant(local("2027-07-01 12:00")), utc("2027-07-01 12:00"));
}

TEST(Zone, KnowsTheRulesOf2027) {
  EXPECT_EQ(chicago().name(), "America/Chicago");
  EXPECT_EQ(chicago().offset(utc("2027-01-11 14:00")), -6h);
  EXPECT_EQ(chicago().offset(utc("2027-07-01 12:00")), -5h);  // fails where the machine's zone files lack this year
  EXPECT_EQ(chicago().offset(utc("2036-07-01 12:00")), -5h);  // last_year
}

TEST(Zone, ClocksGoForwardOn14March) {
  EXPECT_EQ(chicago().to_local(utc("2027-03-14 07:59")), local("2027-03-14 01:59"));
  EXPECT_EQ(chicago().to_local(utc("2027-03-14 08:00")), local("2027-03-14 03:00"));
}

TEST(Zone, ASkippedTimeMovesToTheEndOfTheGap) {
  EXPECT_EQ(chicago().to_instant(local("2027-03-14 02:00")), utc("2027-03-14 08:00"));
  EXPECT_EQ(chicago().to_instant(local("2027-03-14 02:30")), utc("2027-03-14 08:00"));
  EXPECT_EQ(chicago().to_instant(local("2027-03-14 03:00")), utc("2027-03-14 08:00"));
}

TEST(Zone, ATimeThatComesTwiceIsTheFirst) {
  EXPECT_EQ(chicago().to_instant(local("2027-11-07 01:30")), utc("2027-11-07 06:30"));
  EXPECT_EQ(chicago().to_local(utc("2027-11-07 07:30")), local("2027-11-07 01:30"));
  EXPECT_EQ(chicago().to_instant(local("2027-11-07 02:00")), utc("2027-11-07 08:00"));
}

TEST(Zone, CuringIsElapsedTime) {
  const Instant evening = chicago().to_instant(local("2027-03-13 17:00"));
  EXPECT_EQ(chicago().to_local(later(evening, Hours(24))), local("2027-03-14 18:00"));
  EXPECT_EQ(chicago().to_instant(local("2027-03-14 17:00")) - evening, 23h);
}

TEST(Iso8601, IsReadAsItIsWritten) {
  const Zone st_johns = Zone::find("America/St_Johns").value();
  for (const Zone& zone : {Zone(), chicago(), st_johns}) {
    for (const char* time : {"2027-01-11 14:00", "2027-07-01 23:45"}) {
      const Instant instant = utc(time) + 7s;
      EXPECT_EQ(parse_iso8601(iso8601(instant, zone)).value(), instant);
    }
  }
  for (const char* wrong : {"", "2027-01-11 14:00", "2027-01-11T14:00:00", "2027-01-11T14:00:00Z0:00", "2027-02-30T14:00:00+00:00",
                            "2027-01-11T25:00:00+00:00", "2027-01-11T14:00:61+00:00", "2027-01-11T14:00:00+00:75"}) {
    EXPECT_FALSE(parse_iso8601(wrong)) << wrong;
  }
}

TEST(Iso8601, CarriesTheOffset) {
  EXPECT_EQ(iso8601(utc("2027-01-11 14:00"), chicago()), "2027-01-11T08:00:00-06:00");
  EXPECT_EQ(iso8601(utc("2027-07-01 12:00"), chicago()), "2027-07-01T07:00:00-05:00");
  EXPECT_EQ(iso8601(utc("2027-07-01 12:00") + 7s, Zone()), "2027-07-01T12:00:07+00:00");
  EXPECT_EQ(iso8601(utc("2027-07-01 12:00"), Zone::find("Asia/Kolkata").value()), "2027-07-01T17:30:00+05:30");      // from memory
  EXPECT_EQ(iso8601(utc("2027-01-11 12:00"), Zone::find("America/St_Johns").value()), "2027-01-11T08:30:00-03:30");  // from memory
}

TEST(ZoneFind, HelpsWithTheName) {
  EXPECT_EQ(Zone::find("America/Chicgo").error(), "unknown time zone 'America/Chicgo'; did you mean 'America/Chicago'?");
  EXPECT_EQ(Zone::find("america/chicago").error(), "unknown time zone 'america/chicago'; did you mean 'America/Chicago'?");
  EXPECT_EQ(Zone::find("the shop").error(),
            "unknown time zone 'the shop'; expected a name that means the same on every machine, such as America/Chicago or UTC");
  EXPECT_FALSE(Zone::find(""));
  EXPECT_FALSE(Zone::find("tzdata.zi"));  // a file of the database, but no zone
  EXPECT_FALSE(Zone::find("../../../etc/passwd"));
}

RC_GTEST_PROP(ZoneProperty, InstantsComeBackExceptInTheSecondPassOfAFold, ()) {
  const Zone zone = chicago();
  const Instant instant(std::chrono::seconds(*rc::gen::inRange<long>(946'684'800, 2'114'380'800)));  // 2000 to 2036
  const Instant back = zone.to_instant(zone.to_local(instant));
  RC_ASSERT(back == instant || back == instant - 1h);
  RC_ASSERT(zone.to_local(back) == zone.to_local(instant));
}

RC_GTEST_PROP(ZoneProperty, WallTimeNeverRunsBackwards, ()) {
  const Zone zone = chicago();
  const LocalTime time(std::chrono::seconds(*rc::gen::inRange<long>(946'684'800, 2'114'380'800)));
  const Minutes step(*rc::gen::inRange(0, 3 * 24 * 60));
  RC_ASSERT(zone.to_instant(time + step) >= zone.to_instant(time));
}

}  // namespace
}  // namespace coatday
