#include "report/document/lines.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "report/document/table.h"
#include "report/document/unicode.h"

namespace coatday::report {
namespace {

std::string plain(const Lines& lines) { return render(lines, false); }

TEST(Unicode, RoundTrip) {
  for (const char32_t code : {U'a', U'é', U'€', U'木', U'🪑'}) {
    std::string text;
    append_utf8(text, code);
    std::string_view rest = text;
    EXPECT_EQ(take_code_point(rest), code);
    EXPECT_TRUE(rest.empty());
  }
}

// Unicode Standard 15.0, table 3-7: well-formed UTF-8 byte sequences. These are not among them.
TEST(Unicode, IllFormedBytesAreReplaced) {
  for (const char* bytes : {"\xc0\xaf", "\xe0\x80\xaf", "\xed\xa0\x80", "\xf4\x90\x80\x80", "\x80", "\xff", "\xe2\x82"}) {
    std::string_view rest = bytes;
    EXPECT_EQ(take_code_point(rest), char32_t{0xFFFD}) << rest;
  }
}

// UAX #11: ideographs and emoji are wide; combining marks add nothing.
TEST(Unicode, Columns) {
  EXPECT_EQ(Text("19 °C, m²").width(), 9);
  EXPECT_EQ(Text("木工").width(), 4);
  EXPECT_EQ(Text("e\u0301").width(), 1);
}

TEST(Unicode, ControlsAreReplaced) {
  EXPECT_EQ(plain({Text("a\x1b[31mb")}), "a\uFFFD[31mb\n");
  EXPECT_EQ(plain({Text("two\nlines\tand\ttabs")}), "two lines and tabs\n");
  EXPECT_EQ(plain({Text("\u202eabc\u2066")}), "\uFFFDabc\uFFFD\n");
}

TEST(Wrap, AtSpaces) { EXPECT_EQ(plain(wrap("one two three four", 9)), "one two\nthree\nfour\n"); }
TEST(Wrap, LongWordIsCut) { EXPECT_EQ(plain(wrap("abcdefgh ij", 3)), "abc\ndef\ngh\nij\n"); }
TEST(Wrap, UnbrokenSpaceHolds) { EXPECT_EQ(plain(wrap("at 19\u00a0°C", 6)), "at\n19 °C\n"); }
TEST(Wrap, Nothing) { EXPECT_EQ(plain(wrap("", 6)), "\n"); }

TEST(Hang, FollowingLinesStandUnderTheFirst) {
  EXPECT_EQ(plain(hang("  why  ", "one two three", {Units::metric, false, 15})), "  why  one two\n       three\n");
}

TEST(Render, ColourEndsWithTheLine) { EXPECT_EQ(render({Text("a", Mark::good) + " b"}, true), "\x1b[0;32ma\x1b[0m b\n"); }

TEST(Table, ColumnsGiveWay) {
  const TextTable table{{{"name"}, {"n", Align::right}}, {{"walnut board", "12"}, {"oak", "3"}}};
  EXPECT_EQ(plain(layout(table, 0, {})), "name           n\nwalnut board  12\noak            3\n");
  EXPECT_EQ(plain(layout(table, 0, {Units::metric, false, 11})), "name      n\nwalnut   12\nboard\noak       3\n");
}

TEST(Table, WordsAreKeptWholeWhileAnotherColumnCanGiveWay) {
  const TextTable table{{{"id"}, {"use"}}, {{"water-clear-three-coats", "tables and cases"}}};
  EXPECT_EQ(
      plain(layout(table, 0, {Units::metric, false, 33})),
      "id                       use\nwater-clear-three-coats  tables\n                         and\n                         cases\n");
}

TEST(Wrap, AWordWithoutWidthIsAWord) { EXPECT_EQ(render(wrap("\xCD\x82 a", 2), false), "\xCD\x82 a\n"); }

RC_GTEST_PROP(Wrap, NeverWiderAndLosesNoWord, ()) {
  const auto words = *rc::gen::container<std::vector<std::string>>(rc::gen::nonEmpty(rc::gen::string<std::string>()));
  std::string text;
  for (const std::string& word : words) text += word + " ";
  const int width = *rc::gen::inRange(2, 40);
  std::size_t signs = 0;
  for (const Text& line : wrap(text, width)) {
    RC_ASSERT(line.width() <= width);
    for (const char c : render({line}, false)) signs += c != ' ' && c != '\n' ? 1 : 0;
  }
  std::size_t expected = 0;
  for (const char c : render({Text(text)}, false)) expected += c != ' ' && c != '\n' ? 1 : 0;
  RC_ASSERT(signs == expected);
}

}  // namespace
}  // namespace coatday::report
