// Each node of a document on a page.
#include "report/document/render_html.h"

#include <gtest/gtest.h>

#include <chrono>

#include "report/document/element.h"
#include "report/document/lines.h"
#include "report/document/render_text.h"

namespace coatday::report {
namespace {

const std::string evil = "<script>alert('x')</script> \"quoted\" & 'single' \x01 \xff ]]> --> </style>";

/// What stands in the page's main part.
std::string main_of(const Document& document) {
  const std::string html = render_html(document, {"shop", "key", "foot"});
  const std::size_t begin = html.find("<main"), end = html.find("</main>");
  return html.substr(html.find('>', begin) + 1, end - html.find('>', begin) - 1);
}
std::string body(Section section) { return main_of(Document{"Table", {}, {std::move(section)}}); }
std::string block(Block block) { return body(Section{"", {}, {}, {std::move(block)}}); }

Instant at(int hour, int minute) { return Instant(std::chrono::hours(24 * 365 + hour) + std::chrono::minutes(minute)); }

TEST(Page, TitleSubtitleHouseAndFoot) {
  const std::string html = render_html(Document{"Table", "from Monday", {}}, {"The shop", "key", "foot"});
  EXPECT_NE(html.find("<title>Table, The shop</title>"), std::string::npos);
  EXPECT_NE(html.find("<p class=\"shop\"><bdi>The shop</bdi></p><h1>Table</h1><p class=\"from\">from Monday</p>"), std::string::npos);
  EXPECT_NE(html.find("<main data-plan=\"key\">"), std::string::npos);
  EXPECT_NE(html.find("<footer><p>foot</p></footer>"), std::string::npos);
}

TEST(Page, ASectionHasItsTitleItsLeadAndALink) {
  const Document document{"Table", {}, {Section{"a", "First", "lead", {Paragraph{"one"}}}}};
  EXPECT_EQ(main_of(document), "<section id=\"a\"><h2>First</h2><p class=\"lead\">lead</p><p>one</p></section>");
  EXPECT_NE(render_html(document, {}).find("<li><a href=\"#a\">First</a></li>"), std::string::npos);
}

TEST(Page, WhatIsForATerminalIsNotShown) {
  Section text{"a", "First", {}, {Paragraph{"one"}}};
  text.media = Media::text;
  EXPECT_EQ(body(text), "");
  text.media = Media::both;
  text.title_in = Media::text;
  EXPECT_EQ(body(text), "<section id=\"a\"><p>one</p></section>");
}

TEST(Page, WithoutATitleASectionOnlyGathersItsBlocks) {
  EXPECT_EQ(body(Section{"", {}, {}, {Paragraph{"one"}, Section{"", "Two", {}, {Paragraph{"two"}}}}}),
            "<p>one</p><section><h2>Two</h2><p>two</p></section>");
}

TEST(Page, NestedTitlesAreALevelDeeper) {
  const Section inner{"", "Inner", {}, {Section{"", "Innermost"}}};
  EXPECT_EQ(body(Section{"", "Outer", {}, {inner}}),
            "<section><h2>Outer</h2><section><h3>Inner</h3><section><h4>Innermost</h4></section></section></section>");
}

TEST(Page, WhatHasATimeOfItsOwnIsAnArticle) {
  Section day{"", "Mon"};
  day.kind = "day";
  day.lasts = Section::Time{Instant(std::chrono::seconds(60)), Instant(std::chrono::seconds(120))};
  EXPECT_EQ(body(day), "<article class=\"day\" data-from=\"60\" data-until=\"120\"><h2>Mon</h2></article>");
}

TEST(Page, MarksNamesLinksAndLongerWords) {
  const Phrase phrase = Phrase("bold", Mark::strong) + " " + Phrase("hole", Mark::bad) + typed("name") + on_page("3", "3 March") +
                        Span{.text = "more", .link = "there"};
  EXPECT_EQ(block(Paragraph{phrase}),
            "<p><b>bold</b> <span class=\"bad\">hole</span><bdi>name</bdi>3 March<a href=\"#there\">more</a></p>");
  EXPECT_EQ(block(Paragraph{{"late", Mark::bad}}), "<p class=\"bad\">late</p>") << "of one mark alone";
  EXPECT_EQ(block(Paragraph{"words", {"note", Mark::faint}}), "<p class=\"headed\"><span class=\"faint\">note</span> words</p>");
}

TEST(Page, FactsAndAnswers) {
  Facts facts{{{"air", "19 °C", "all day"}, {"", "more"}}};
  EXPECT_EQ(block(facts), "<dl class=\"facts\"><dt>air</dt><dd>19 °C, all day</dd><dd>more</dd></dl>");
  facts = {{{"Ready", {"never", Mark::bad}, "in this air"}}, true};
  EXPECT_EQ(block(facts),
            "<dl class=\"answers\"><div><dt>Ready</dt><dd><strong class=\"bad\">never</strong><span class=\"small\">in this "
            "air</span></dd></div></dl>");
}

TEST(Page, Lists) {
  EXPECT_EQ(block(List{List::Kind::points, {"one", "two"}}), "<ul class=\"points\"><li>one</li><li>two</li></ul>");
  EXPECT_EQ(block(List{List::Kind::cautions, {Span{.text = "rags", .id = "caution-rags"}}}),
            "<ul class=\"cautions\"><li id=\"caution-rags\">rags</li></ul>");
  EXPECT_EQ(block(List{List::Kind::boxes, {Span{.text = "rags", .id = "got/rags"}}}),
            "<ul class=\"boxes\"><li><label><input type=\"checkbox\" id=\"got/rags\"/><span>rags</span></label></li></ul>");
  EXPECT_EQ(block(List{}), "");
}

TEST(Page, ATableHasHeadsGroupsDetailsAndMarks) {
  const Table table{
      "dates", "Dates", {{"what"}, {"when", Align::right}}, {{"table", {{{"pack", {"Mon", Mark::strong}}}, {{}, {"promised"}}}}}};
  EXPECT_EQ(block(table),
            "<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"Dates\"><table class=\"dates\"><caption>Dates</caption>"
            "<thead><tr><th scope=\"col\">what</th><th scope=\"col\" class=\"number\">when</th></tr></thead>"
            "<tbody><tr class=\"of\"><th scope=\"rowgroup\" colspan=\"2\">table</th></tr>"
            "<tr><th scope=\"row\">pack</th><td class=\"strong number\">Mon</td></tr>"
            "<tr class=\"details\"><td colspan=\"2\"><p>promised</p></td></tr></tbody></table></div>");
}

TEST(Page, ATablesColumnsMayStandAboveOrBelow) {
  Table table{"buy",
              "",
              {{"part", Align::left, false, OnPage::above}, {"what"}, {"need", Align::right, false, OnPage::below}, {"cost"}},
              {{{}, {{{"top", "oil", "2 l", "3"}, {}, "got/oil"}, {{{}, "wax", "1 l", "4"}}}}}};
  table.box = "got";
  table.sums = {{}, "together", {}, "7"};
  const std::string html = block(table);
  EXPECT_NE(html.find("<thead><tr><th scope=\"col\">got</th><th scope=\"col\">what</th><th scope=\"col\">cost</th></tr></thead>"),
            std::string::npos)
      << html;
  EXPECT_NE(html.find("<tr class=\"of\"><th scope=\"rowgroup\" colspan=\"3\">top</th></tr>"), std::string::npos) << html;
  EXPECT_NE(html.find("<tr><td class=\"tick\"><input type=\"checkbox\" id=\"got/oil\" aria-label=\"got: oil 3\"/></td><th scope=\"row\">oil"
                      "<span class=\"below\">need 2 l</span></th><td>3</td></tr>"),
            std::string::npos)
      << html;
  EXPECT_NE(html.find("<tr><td class=\"tick\"></td><th scope=\"row\">wax"), std::string::npos) << html;
  EXPECT_NE(html.find("<tfoot><tr><td></td><th scope=\"row\">together</th><td>7</td></tr></tfoot>"), std::string::npos) << html;
}

TEST(Page, StepsHaveBoxesAndACautionIsInFullOnce) {
  const Phrase caution = Span{.text = "Rags", .link = "caution-rags", .full = "Rags: outdoors."};
  Steps::Step oil{"table/oil", at(8, 0), at(8, 30), "oil", "top", "wipe", {"wet until 10:00", {}}, {caution}, {}, true};
  Steps::Step wait{"", at(8, 30), at(9, 0), "wait", "oil dries"},
      night{"", at(9, 30), at(9, 30), on_page("night", "Overnight"), "oil dries"};
  Steps::Step wax{"table/wax", at(9, 0), at(9, 30), "wax", {}, {}, {}, {caution}, {}, true, true};
  const std::string html = block(Steps{Zone(), {oil, wait, wax, night}});
  EXPECT_EQ(
      html,
      "<ol class=\"steps\"><li class=\"coat\"><p class=\"time\"><time>08:00</time><span>0:30</span></p><div class=\"what\"><label>"
      "<input type=\"checkbox\" id=\"done/table/oil\"/><b>oil</b></label><p>top</p><p class=\"how\">wipe</p></div><div class=\"more\">"
      "<p class=\"fact\">wet until 10:00</p><ul class=\"cautions\"><li>Rags: outdoors.</li></ul></div></li>"
      "<li class=\"wait\"><p class=\"time\"><time>08:30</time><span>0:30</span></p><div class=\"what\"><b>wait</b></div>"
      "<div class=\"more\"><p>oil dries</p></div></li>"
      "<li class=\"coat\"><p class=\"time\"><time>09:00</time><span>0:30</span></p><div class=\"what\"><label>"
      "<input type=\"checkbox\" id=\"done/table/wax\" checked=\"checked\"/><b>wax</b></label></div><div class=\"more\">"
      "<ul class=\"cautions\"><li><a href=\"#caution-rags\">Rags</a></li></ul></div></li></ol>"
      "<div class=\"night\"><b>Overnight</b><ul><li>oil dries</li></ul></div>");
}

TEST(Page, AFigureDrawsItself) {
  const Figure figure{"", [](page::Element parent) { parent.add("svg", {}); }, "a drawing"};
  EXPECT_EQ(block(figure), "<svg/>");
}

TEST(Page, HostileNamesStayTextInEveryNode) {
  const Phrase name = typed(evil) + Span{.text = evil, .link = evil, .id = evil, .full = evil};
  Table table{"t", evil, {{name}}, {{name, {{{name}, {name}, evil}}}}};
  table.box = evil;
  Section section{evil,
                  name,
                  name,
                  {Paragraph{name, name}, Facts{{{name, name, name}}}, Facts{{{name, name, name}}, true}, List{List::Kind::points, {name}},
                   List{List::Kind::boxes, {name}}, table, Steps{Zone(), {{evil, at(8, 0), at(9, 0), name, name, name, {name}, {name}}}}}};
  section.kind = evil;
  const std::string html = render_html(Document{name, name, {section}}, {evil, evil, evil});
  EXPECT_EQ(html.find("<script>alert"), std::string::npos);
  EXPECT_EQ(html.find("</style>"), html.rfind("</style>"));
  EXPECT_EQ(html.find('\x01'), std::string::npos);
  EXPECT_NE(html.find("&lt;script&gt;alert"), std::string::npos);
}

}  // namespace
}  // namespace coatday::report
