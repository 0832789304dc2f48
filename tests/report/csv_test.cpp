// Fields for spreadsheets; tests/peers/tables.py reads whole tables back with another library.
#include "report/files/csv.h"

#include <gtest/gtest.h>

#include "report/files/tables.h"
#include "tests/report/sample_plan.h"

namespace coatday::report {
namespace {

TEST(Csv, QuotesWhatSeparates) {
  EXPECT_EQ(csv_text("plain"), "plain");
  EXPECT_EQ(csv_text("a,b"), "\"a,b\"");
  EXPECT_EQ(csv_text("say \"no\""), "\"say \"\"no\"\"\"");
  EXPECT_EQ(csv_text("two\nlines"), "\"two\nlines\"");
  EXPECT_EQ(csv_text(""), "");
}

// What spreadsheets take for formulas: OWASP, "CSV Injection" (the signs from memory).
TEST(Csv, NoTextIsAFormula) {
  for (const char* text :
       {"=1+1", "+1", "-1", "@a", " =1", "\n=1", "\u00a0=1", "\t=1", "\r=1", "\uff1d1", "\uff0b1", "\uff0d1", "\uff20a"}) {
    const std::string field = csv_text(text);
    EXPECT_TRUE(field.starts_with("'") || field.starts_with("\"'")) << field;
  }
  EXPECT_EQ(csv_text("a=1"), "a=1");
  EXPECT_EQ(csv_text("1-2"), "1-2");
}

TEST(Csv, NothingSteersATerminal) { EXPECT_EQ(csv_text("\x1b[2J").find('\x1b'), std::string::npos); }

TEST(Csv, NumbersStayNumbers) {
  EXPECT_EQ(csv_number(-1.5, 1), "-1.5");
  EXPECT_EQ(csv_number(-0.001, 2), "0.00");
  EXPECT_EQ(csv_number(2.345, 2), "2.35");
  EXPECT_EQ(csv_row({"a", "", "1"}), "a,,1\r\n");
}

TEST(Csv, HostileNamesStayInTheirFields) {
  const job::Plan plan = sample::hostile("=1,\"\r\n");
  const std::string text = calendar_csv(plan, "=1,\"\r\n", Units::metric);
  EXPECT_TRUE(text.starts_with(calendar_csv_header()));
  bool quoted = false;
  std::size_t rows = 0;
  for (const char c : text) {
    if (c == '"') quoted = !quoted;
    if (c == '\n' && !quoted) ++rows;
  }
  EXPECT_FALSE(quoted);
  EXPECT_GE(rows, plan.events.size() + 1);
}

}  // namespace
}  // namespace coatday::report
