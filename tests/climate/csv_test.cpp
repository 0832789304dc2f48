#include "climate/csv.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace coatday::climate {
namespace {

using Rows = std::vector<std::vector<std::string>>;

Rows rows(std::string_view text, char separator = ',') {
  CsvReader reader(text, separator);
  Rows all;
  while (const CsvRow* row = reader.next()) {
    all.emplace_back();
    for (const CsvField& field : row->fields) all.back().emplace_back(field.text);
  }
  return all;
}

// RFC 4180, section 2, rules 1 to 7; its examples.
TEST(Csv, TheRulesOfRfc4180) {
  EXPECT_EQ(rows("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"), (Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
  EXPECT_EQ(rows("aaa,bbb,ccc\r\nzzz,yyy,xxx"), (Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}})) << "the last line end may be missing";
  EXPECT_EQ(rows("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"), (Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
  EXPECT_EQ(rows("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"), (Rows{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
  EXPECT_EQ(rows("\"aaa\",\"b\"\"bb\",\"ccc\""), (Rows{{"aaa", "b\"bb", "ccc"}}));
}

TEST(Csv, OtherSeparatorsBlanksBlankLinesCommentsAndAByteOrderMark) {
  EXPECT_EQ(rows("\xEF\xBB\xBF a ; b\t;\r\n\r\n  \r\n\"1;2\";3", ';'), (Rows{{"a", "b", ""}, {"1;2", "3"}}));
  EXPECT_EQ(rows("a\t\"b\t\"\tc", '\t'), (Rows{{"a", "b", "c"}}));
  EXPECT_EQ(rows("# a, \"b\n1,2"), (Rows{{"# a, \"b"}, {"1", "2"}}));
  EXPECT_EQ(rows("5\" probe,\"x\" y"), (Rows{{"5\" probe", "xy"}})) << "against the standard, and nothing is lost";
}

TEST(Csv, RowsKnowTheirLinesAndFieldsTheirPlaces) {
  const std::string text = "a\n\n\"b\nb\",c\nd,é,f\n";
  CsvReader reader(text, ',');
  EXPECT_EQ(reader.next()->line, 1);
  EXPECT_EQ(reader.next()->line, 3);
  const CsvRow* row = reader.next();
  EXPECT_EQ(row->line, 5);
  const ReadError at = error_at(text, row->at(2), "");
  EXPECT_EQ(at.line, 5);
  EXPECT_EQ(at.column, 5) << "in characters";
}

TEST(Csv, AQuoteThatIsNeverClosedIsFound) {
  CsvReader reader("a,b\nc,\"d\ne,f\n", ',');
  EXPECT_NE(reader.next(), nullptr);
  EXPECT_EQ(reader.next(), nullptr);
  EXPECT_EQ(reader.open_quote(), 6U);
}

TEST(Csv, Decimals) {
  EXPECT_EQ(decimal("-2.5"), -2.5);
  EXPECT_EQ(decimal("+2"), 2);
  EXPECT_EQ(decimal("2,5"), 2.5);
  for (const auto* text : {"", "x", "2x", "nan", "inf", "+-2", " 2"}) EXPECT_EQ(decimal(text), std::nullopt) << text;
  EXPECT_EQ(decimal("1,000,5"), std::nullopt);
}

TEST(Csv, WhatIsShownIsOneLineOfText) {
  EXPECT_EQ(shown("a\nb\x8F"
                  "°C"),
            "'a?b?°C'");
  EXPECT_EQ(shown("Z\xFC"
                  "rich Zürich"),
            "'Zürich Zürich'")
      << "Latin-1 and UTF-8";
  EXPECT_EQ(shown(std::string(100, 'x')), "'" + std::string(40, 'x') + "…'");
}

TEST(Csv, LinesThatCannotBeReadAreTold) {
  EXPECT_FALSE(unreadable_lines("a,b\r\n1,2\r\n"));
  EXPECT_FALSE(unreadable_lines(""));
  EXPECT_EQ(unreadable_lines("a,b\r1,2\r").value().column, 1);
  EXPECT_TRUE(unreadable_lines("\xFF\xFE"));
}

/// Written by the standard's rules and read again: the same.
RC_GTEST_PROP(Csv, RoundTrip, ()) {
  const auto letter = rc::gen::element('a', ',', '"', '\n', 'b', ';');
  const auto table = *rc::gen::nonEmpty(rc::gen::container<std::vector<std::vector<std::string>>>(
      rc::gen::nonEmpty(rc::gen::container<std::vector<std::string>>(rc::gen::container<std::string>(letter)))));
  std::string text;
  for (const auto& row : table) {
    for (std::size_t i = 0; i < row.size(); ++i) {
      text += i == 0 ? "\"x" : ",\"x";  // a field is never blank, and never begins a comment
      for (const char c : row[i]) text += c == '"' ? std::string("\"\"") : std::string(1, c);
      text += "x\"";
    }
    text += "\r\n";
  }
  Rows expected = table;
  for (auto& row : expected)
    for (auto& field : row) field = "x" + field + "x";
  RC_ASSERT(rows(text) == expected);
}

RC_GTEST_PROP(Csv, AnyBytesComeToAnEnd, ()) {
  const auto text = *rc::gen::container<std::string>(rc::gen::element('a', ',', '"', '\n', '\r', '#', ' '));
  RC_ASSERT(rows(text).size() <= text.size());
}

}  // namespace
}  // namespace coatday::climate
