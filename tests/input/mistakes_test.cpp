// How a mistake is printed.
#include "input/mistakes.h"

#include <gtest/gtest.h>

#include "input/source.h"

namespace coatday::input {
namespace {

TEST(ToText, ShowsTheLineAndACaret) {
  const Diagnostic d{{"order.yaml", 3, 11}, "unknown finish 'sealar'", "schedule: sealar"};
  EXPECT_EQ(to_text(d), "order.yaml:3:11: error: unknown finish 'sealar'\nschedule: sealar\n          ^");
}

TEST(ToText, IsOneLineWithoutText) {
  EXPECT_EQ(to_text({{"order.yaml", 0, 0}, "cannot read", ""}), "order.yaml: error: cannot read");
  EXPECT_EQ(to_text({{"order.yaml", 2, 1}, "no text", ""}), "order.yaml:2:1: error: no text");
}

TEST(ToText, KeepsTabsAndCountsCharacters) { EXPECT_EQ(to_text({{"f", 1, 5}, "m", "\té°x"}), "f:1:5: error: m\n\té°x\n\t   ^"); }

TEST(ToText, CutsLongLinesAroundTheCaret) {
  const std::string line = std::string(200, 'a') + "X" + std::string(200, 'b');
  EXPECT_EQ(to_text({{"f", 1, 201}, "m", line}),
            "f:1:201: error: m\n…" + std::string(49, 'a') + "X" + std::string(48, 'b') + "…\n" + std::string(50, ' ') + "^");
  EXPECT_EQ(to_text({{"f", 1, 1}, "m", line}), "f:1:1: error: m\n" + std::string(99, 'a') + "…\n^");
  EXPECT_EQ(to_text({{"f", 1, 402}, "m", line}), "f:1:402: error: m\n…" + std::string(99, 'b') + "\n" + std::string(100, ' ') + "^");
}

TEST(ToText, PrintsNoBytesThatAreNoText) { EXPECT_EQ(to_text({{"f", 1, 1}, "m", "a\x1b\xff\x7f"}), "f:1:1: error: m\na???\n^"); }

TEST(Mistakes, AreSortedAndToldOnce) {
  Mistakes mistakes;
  mistakes.add({"b", 1, 1}, "x");
  mistakes.add({"a", 2, 1}, "x");
  mistakes.add({"a", 1, 9}, "x");
  mistakes.add({"a", 2, 1}, "x");
  const auto all = mistakes.sorted();
  ASSERT_EQ(all.size(), 3U);
  EXPECT_EQ(to_text(all[0]), "a:1:9: error: x");
  EXPECT_EQ(to_text(all[1]), "a:2:1: error: x");
  EXPECT_EQ(to_text(all[2]), "b:1:1: error: x");
}

TEST(Unknown, GuessesOrListsTheChoice) {
  EXPECT_EQ(unknown("method", "brsh", {"brush", "wipe"}), "unknown method 'brsh'; did you mean 'brush'?");
  EXPECT_EQ(unknown("method", "xyz", {"brush", "wipe"}), "unknown method 'xyz'; expected one of brush, wipe");
  EXPECT_EQ(unknown("method", "xyz", {}), "unknown method 'xyz'");
  EXPECT_EQ(unknown("key", "x", {"a b"}, " in a mask"), "unknown key 'x' in a mask; expected a b");
}

TEST(Source, FindsPlacesInVeryLongLines) {
  std::string line;
  for (int i = 0; i < 5000; ++i) line += "é,";
  const Source source("f", "first\n" + line + "\nlast");
  const Location where = source.location(6 + 3 * 4000);
  EXPECT_EQ(where.line, 2);
  EXPECT_EQ(where.column, 8001);
  EXPECT_EQ(source.location(100'000).line, 3);
  EXPECT_EQ(source.line(3), "last");
  EXPECT_EQ(source.line(4), "");
}

TEST(Source, RefusesEveryFormOfBadUtf8) {
  for (const char* bad :
       {"\x80", "\xC0\xAF", "\xC3", "\xE0\x80\x80", "\xED\xA0\x80", "\xF0\x80\x80\x80", "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xFE"}) {
    const auto mistake = find_mistake(std::string("ab") + bad);
    ASSERT_TRUE(mistake) << bad;
    EXPECT_EQ(mistake->at, 2U);
  }
  EXPECT_FALSE(find_mistake("é € 𝄞 \xED\x9F\xBF \xF4\x8F\xBF\xBF\t\r\n"));
}

}  // namespace
}  // namespace coatday::input
