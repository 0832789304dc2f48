// Calendars of hand-made plans; tests/peers/calendar.cjs reads whole ones back with another library.
#include "report/files/calendar.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <sstream>

#include "report/document/lines.h"
#include "report/files/calendar_entries.h"
#include "tests/report/golden.h"
#include "tests/report/sample_plan.h"

namespace coatday::report {
namespace {

const Instant written = date::sys_days(date::year(2027) / 1 / 9) + std::chrono::hours(12);
const std::string order = "Library table";

std::string ics(const job::Plan& plan, const std::string& name = order) { return calendar_ics(plan, name, Units::metric, written, "0"); }

std::vector<std::string> ids(const job::Plan& plan, const std::string& name = order) {
  std::vector<std::string> all;
  for (const CalendarEntry& entry : calendar_entries(plan, name, Units::metric)) all.push_back(entry.uid);
  std::sort(all.begin(), all.end());
  return all;
}

TEST(Calendar, Golden) { golden::expect_golden("report/golden/calendar.ics", ics(sample::table())); }

TEST(Calendar, IsKnownAsOurs) { EXPECT_NE(ics(sample::table()).substr(0, 100).find(calendar_mark), std::string::npos); }

TEST(Calendar, EveryStepAndEveryHandOverHasItsOwnId) {
  const job::Plan plan = sample::table();
  std::vector<std::string> all = ids(plan);
  EXPECT_GE(all.size(), plan.events.size() + 1);
  EXPECT_EQ(std::unique(all.begin(), all.end()), all.end());
}

TEST(Calendar, IdsKnowNoDates) {
  job::Plan later = sample::table();
  for (job::Event& event : later.events) {
    event.start += std::chrono::hours(71);
    event.end += std::chrono::hours(71);
  }
  EXPECT_EQ(ids(later), ids(sample::table()));
}

TEST(Calendar, IdsTellOrdersApart) {
  EXPECT_NE(ids(sample::table(), "1, Mill Road"), ids(sample::table(), "1; Mill Road"));
  EXPECT_NE(ids(sample::table(), "\xc3\xa9"), ids(sample::table(), "\xc3\xa8"));
}

// Beside another order that has a piece of the same id, its own has the order's name before it.
TEST(Calendar, AnOrderKeepsItsIdsBesideAnother) {
  job::Plan together = sample::table();
  const std::string alone = together.pieces[0].id;
  together.pieces[0].id = "library-table-" + alone;
  together.pieces[0].order = order;
  for (job::Event& event : together.events) {
    if (event.piece) event.id = "library-table-" + event.id;
  }
  EXPECT_EQ(ids(together, "Library table and another"), ids(sample::table()));
}

TEST(Calendar, WhatIsDoneIsNotCalledOut) {
  job::Plan plan = sample::table();
  plan.events[0].done = true;
  const auto entries = calendar_entries(plan, order, Units::metric);
  EXPECT_TRUE(entries[0].alarms.empty());
  EXPECT_TRUE(entries[0].summary.starts_with("done: "));
  EXPECT_FALSE(entries[1].alarms.empty());
}

TEST(Calendar, LinesAreShortAndEveryOneEnds) {
  for (const char* name :
       {"\xd7\xa9\xd7\x9c\xd7\x95\xd7\x9d", "\xf0\x9f\xaa\xb5\xf0\x9f\xaa\xb5\xf0\x9f\xaa\xb5", "a\r\nBEGIN:VEVENT\n\x1b[2J"}) {
    const std::string text = ics(sample::hostile(name), name);
    EXPECT_TRUE(text.ends_with("END:VCALENDAR\r\n"));
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
      ASSERT_TRUE(line.ends_with('\r')) << line;
      EXPECT_LE(line.size(), 76U) << line;
      EXPECT_EQ(line.find_first_of("\x1b\t\b"), std::string::npos) << line;
      EXPECT_EQ(harmless_text(line.substr(0, line.size() - 1)), line.substr(0, line.size() - 1)) << "a character is cut";
    }
    const auto count = [&text](const std::string& what) {
      std::size_t found = 0;
      for (std::size_t at = 0; (at = text.find(what, at)) != std::string::npos; ++at) ++found;
      return found;
    };
    EXPECT_EQ(count("\r\nBEGIN:VEVENT\r\n"), calendar_entries(sample::hostile(name), name, Units::metric).size());
  }
}

}  // namespace
}  // namespace coatday::report
