// Each node of a document on a terminal of 40, 80 and 100 columns.
#include "report/document/render_text.h"

#include <gtest/gtest.h>

#include <chrono>
#include <sstream>

namespace coatday::report {
namespace {

TextStyle columns(int count) { return {Units::metric, false, count}; }

std::string rendered(Section section, int width) { return render_text(Document{"Table", {}, {std::move(section)}}, columns(width)); }

Section titled(Block block) { return Section{"id", "Title", {}, {std::move(block)}}; }

Instant at(int hour, int minute) { return Instant(std::chrono::hours(24 * 365 + hour) + std::chrono::minutes(minute)); }

TEST(Document, SubtitleStandsAtTheRightWhereItFits) {
  const Document document{"Table", "from Monday", {}};
  EXPECT_EQ(render_text(document, columns(20)), "Table    from Monday\n");
  EXPECT_EQ(render_text(document, columns(16)), "Table\n  from Monday\n");
}

TEST(Document, SectionsStandApartButNotFromTheTitleWhenTheyHaveNone) {
  const Document document{"Table",
                          {},
                          {Section{"a", {}, {}, {Paragraph{"one"}}}, Section{"b", {}, {}, {Paragraph{"two"}}},
                           Section{"c", "Three", "lead", {Paragraph{"four"}}}, Section{"d", {}, {}, {}}}};
  EXPECT_EQ(render_text(document, columns(80)), "Table\n  one\n\ntwo\n\nThree  lead\n  four\n");
}

TEST(Document, WithoutATitleNothingIsIndented) {
  const Table table{"", "", {{"a"}, {"b"}}, {{{}, {{{"1", "2"}}}}}};
  EXPECT_EQ(render_text(Document{{}, {}, {Section{"", {}, {}, {table}}}}, columns(80)), "a  b\n1  2\n");
}

TEST(Section, LeadHangsBesideTheTitle) {
  const Section section{"id", "Faces", "the day on which each coat goes on", {}};
  EXPECT_EQ(render_text(Document{{}, {}, {section}}, columns(80)), "Faces  the day on which each coat goes on\n");
  EXPECT_EQ(render_text(Document{{}, {}, {section}}, columns(25)), "Faces  the day on which\n       each coat goes on\n");
  EXPECT_EQ(render_text(Document{{}, {}, {section}}, columns(20)), "Faces\n  the day on which\n  each coat goes on\n");
}

TEST(Section, NestedOnesStandApartButForOneOfALineBelowATitle) {
  const Section a{"a", "A", {}, {Paragraph{"one"}}}, b{"b", "B", {}, {Paragraph{"two"}}};
  EXPECT_EQ(rendered(Section{"all", "All", {}, {a, b}}, 80), "Table\n\nAll\nA\n  one\n\nB\n  two\n");
  EXPECT_EQ(rendered(Section{"all", "All", {}, {a, Section{"c", "C", "three"}}}, 80), "Table\n\nAll\nA\n  one\nC  three\n");
  EXPECT_EQ(rendered(Section{"all", {}, {}, {a, b}}, 80), "Table\nA\n  one\n\nB\n  two\n");
}

TEST(Section, WhatIsForThePageIsNotShown) {
  Section section = titled(Paragraph{"one"});
  section.title_in = Media::page;
  EXPECT_EQ(rendered(section, 80), "Table\n  one\n");
  section.media = Media::page;
  EXPECT_EQ(rendered(section, 80), "Table\n");
}

TEST(Facts, LabelsShareAColumn) {
  const Facts facts{{{"buy", "2 cans of oil", "about 20"}, {{}, "and more"}, {"a longer label", "none"}}};
  EXPECT_EQ(rendered(titled(facts), 80),
            "Table\n\nTitle\n  buy             2 cans of oil, about 20\n                  and more\n  a longer label  none\n");
  EXPECT_EQ(rendered(titled(Facts{{{"buy", "two cans of oil, and no more than that"}}}), 40),
            "Table\n\nTitle\n  buy       two cans of oil, and no more\n            than that\n");
}

TEST(Facts, WhatIsWrittenInByHandGetsLines) {
  EXPECT_EQ(rendered(titled(Facts{{{"notes"}}}), 16), "Table\n\nTitle\n  notes   ______\n\n          ______\n\n");
}

TEST(List, PointsCautionsAndBoxes) {
  const std::vector<Phrase> items{"one two three"};
  EXPECT_EQ(rendered(titled(List{List::Kind::points, items}), 12), "Table\n\nTitle\n  - one two\n    three\n");
  EXPECT_EQ(rendered(titled(List{List::Kind::cautions, items}), 80), "Table\n\nTitle\n  ! one two three\n");
  EXPECT_EQ(rendered(titled(List{List::Kind::boxes, items}), 100), "Table\n\nTitle\n  [ ]  one two three\n");
}

TEST(Table, GroupsAndDetails) {
  const Table table{"",
                    "",
                    {{"what"}, {"n", Align::right}},
                    {{"first", {{{"oak", "1"}, {"a detail"}}}}, {"second", {{{"walnut", "12"}}, {{}, {"of all of it"}}}}}};
  EXPECT_EQ(
      rendered(titled(table), 80),
      "Table\n\nTitle\n  first\n    what  n\n    oak   1\n      a detail\n  second\n    what     n\n    walnut  12\n    of all of it\n");
}

TEST(Table, ColumnsGiveWay) {
  const Table table{"", "", {{"id"}, {"use"}}, {{{}, {{{"water-clear-three-coats", "tables and cases"}}}}}};
  EXPECT_EQ(rendered(titled(table), 100), "Table\n\nTitle\n  id                       use\n  water-clear-three-coats  tables and cases\n");
  EXPECT_EQ(rendered(titled(table), 40),
            "Table\n\nTitle\n  id                       use\n  water-clear-three-coats  tables and\n                           cases\n");
}

TEST(Table, NarrowColumnsThatDoNotFitFollowBelow) {
  Table table{"", "", {{"part"}}, {{{}, {{{"top"}}}}}};
  for (int coat = 1; coat <= 6; ++coat) {
    table.columns.push_back({"coat " + std::to_string(coat), Align::left, true});
    table.groups.front().rows.front().cells.emplace_back(std::to_string(coat));
  }
  EXPECT_EQ(rendered(titled(table), 40),
            "Table\n\nTitle\n  part  coat 1  coat 2  coat 3  coat 4\n  top   1       2       3       4\n\n  and then\n"
            "  part  coat 5  coat 6\n  top   5       6\n");
  EXPECT_EQ(rendered(titled(table), 80),
            "Table\n\nTitle\n  part  coat 1  coat 2  coat 3  coat 4  coat 5  coat 6\n  top   1       2       3       4       5       6\n");
}

TEST(Table, ALongOneIsCutWithACount) {
  Table table{"", "", {{"n"}}, {{}}};
  for (int i = 0; i < 9; ++i) table.groups.front().rows.push_back({{std::to_string(i)}});
  table.most_lines = 3;
  EXPECT_EQ(rendered(titled(table), 80), "Table\n\nTitle\n  n\n  0\n  1\n  and 7 more\n");
}

Steps day() {
  const Steps::Step wait{{}, at(8, 0), at(9, 30), "wait", "the stain dries"};
  Steps::Step coat{"coat", at(9, 30), at(10, 0), "clear 1"};
  coat.subject = "top and edges";
  coat.how = "brush, 1 person";
  coat.details = {"dries on rack 1 until 14:00", {}};
  coat.cautions = {"No flame", "Wear gloves"};
  return Steps{{}, {wait, coat, {{}, at(10, 0), at(10, 0), "night", "clear 1 dries"}, {{}, at(10, 0), at(10, 0), "night", "oil dries"}}};
}

TEST(Steps, HoursTitleAndSubjectInColumns) {
  for (const int width : {80, 100}) {
    EXPECT_EQ(rendered(titled(day()), width),
              "Table\n\nTitle\n  08:00  1:30  wait: the stain dries\n"
              "  09:30  0:30  clear 1                 top and edges\n"
              "                                       brush, 1 person\n"
              "                 dries on rack 1 until 14:00\n"
              "                 ! No flame; Wear gloves\n"
              "  night:       clear 1 dries\n"
              "               oil dries\n");
  }
}

TEST(Steps, OnANarrowTerminalTheSubjectStandsBelow) {
  EXPECT_EQ(rendered(titled(day()), 40),
            "Table\n\nTitle\n  08:00  1:30  wait: the stain dries\n"
            "  09:30  0:30  clear 1\n"
            "                 top and edges\n"
            "                 brush, 1 person\n"
            "                 dries on rack 1 until\n"
            "                 14:00\n"
            "                 ! No flame; Wear gloves\n"
            "  night:       clear 1 dries\n"
            "               oil dries\n");
}

TEST(Steps, WithBlanksTheyAreAForm) {
  Steps::Step coat{
      "coat", at(9, 30), at(10, 0), "clear 1", "top", {}, {"next: turn"}, {"No flame"}, {"from ______ to ______", "______ % RH"}};
  EXPECT_EQ(rendered(titled(Steps{{}, {coat}}), 60),
            "Table\n\nTitle\n[ ]  09:30-10:00  clear 1              from ______ to ______\n"
            "                  top                            ______ % RH\n"
            "                  next: turn\n"
            "                  ! No flame\n\n");
}

TEST(Section, ALineToCutAlong) {
  Section section = titled(Paragraph{"one"});
  section.cut_off = true;
  EXPECT_EQ(rendered(section, 9), "Table\n\n---------\nTitle\n  one\n");
}

TEST(Figure, ATerminalSaysSomethingInstead) {
  EXPECT_EQ(rendered(titled(Figure{"f", {}, "a drawing"}), 80), "Table\n\nTitle\n  a drawing\n");
  EXPECT_EQ(rendered(titled(Figure{"f", {}, {}}), 80), "Table\n\nTitle\n");
}

// Control characters, words without end, and wide characters, in every text of every node.
TEST(Document, HostileNamesNeverLeaveTheirColumns) {
  for (const std::string& bad : {std::string("\x1b[2J\nname"), std::string(200, 'x'),
                                 std::string("木工の机と椅子、長い名前の注文") + "\xCC\x81", std::string("\xff")}) {
    Steps::Step step{"key", at(8, 0), at(9, 0), bad, bad, bad, {bad}, {bad, bad}};
    const Table table{bad, bad, {{bad}, {bad, Align::right}}, {{bad, {{{bad, bad}, {bad}}}}}};
    const Table narrow{bad, bad, {{bad}, {bad, Align::left, true}, {bad, Align::left, true}}, {{{}, {{{bad, bad, bad}}}}}};
    const Section section{bad,
                          bad,
                          bad,
                          {Paragraph{bad}, Facts{{{bad, bad, bad}}}, List{List::Kind::cautions, {bad}}, table, narrow, Steps{{}, {step}},
                           Figure{bad, {}, bad}, Section{bad, bad, {}, {Paragraph{bad}}}}};
    for (const int width : {40, 80, 100}) {
      const std::string text = render_text(Document{bad, bad, {section}}, columns(width));
      EXPECT_EQ(text.find('\x1b'), std::string::npos);
      std::istringstream lines(text);
      for (std::string line; std::getline(lines, line);) EXPECT_LE(Text(line).width(), width) << line;
    }
  }
}

TEST(Document, MarksBecomeColours) {
  const Document document{"T", {}, {Section{"s", {}, {}, {Paragraph{Phrase("late", Mark::bad) + " again"}}}}};
  EXPECT_EQ(render_text(document, {Units::metric, true, 80}), "\x1b[0;1mT\x1b[0m\n  \x1b[0;1;31mlate\x1b[0m again\n");
}

}  // namespace
}  // namespace coatday::report
