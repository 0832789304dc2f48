// The page as a tree and as text; a browser looks at it in tests/browser.
#include "report/papers/page.h"

#include <gtest/gtest.h>

#include <map>
#include <set>

#include "planner/make/make_plan.h"
#include "report/document/element.h"
#include "report/figures/time_scale.h"
#include "report/figures/timeline.h"
#include "report/figures/views.h"
#include "tests/report/sample_plan.h"
#include "tests/support/jobs.h"

namespace coatday::report::page {
namespace {

const std::string evil = "<script>alert('x')</script> \"quoted\" & 'single' \x01 \xff =cmd() ]]> --> </style>";

job::Job several(int pieces) {
  tests::JobKnobs knobs;
  knobs.pieces = pieces;
  knobs.points = 60;
  knobs.doors = 2;
  return tests::make_job(knobs);
}

TEST(Element, WhatGoesInStaysText) {
  Fragment page;
  Element paragraph = page.root().add("p", {{"title", evil}}, evil);
  paragraph.name(evil);
  const std::string html = page.html();
  EXPECT_EQ(html.find("<script"), std::string::npos) << html;
  EXPECT_EQ(html.find("</style"), std::string::npos) << html;
  EXPECT_EQ(html.find('\x01'), std::string::npos);
  EXPECT_EQ(html.find('\xff'), std::string::npos);
  EXPECT_NE(html.find("&lt;script&gt;"), std::string::npos) << html;
  EXPECT_NE(html.find("title=\"&lt;script>alert('x')&lt;/script> &quot;quoted&quot; &amp; 'single'"), std::string::npos) << html;
}

TEST(Element, EmojiAndOtherWritingStay) {
  Fragment page;
  page.root().add("p", {}, "👩\u200d🔧 שולחן 卓");
  EXPECT_EQ(page.html(), "<p>👩\u200d🔧 שולחן 卓</p>");
}

TEST(Element, WhatTurnsTheDirectionOfWritingIsReplaced) {
  Fragment page;
  page.root().add("p", {}, "a\u202eb");
  EXPECT_EQ(page.html(), "<p>a\ufffdb</p>");
}

TEST(Element, OnlyVoidElementsHaveNoEndTag) {
  Fragment page;
  Element root = page.root().add("div", {});
  root.add("p", {});
  root.add("input", {{"type", "checkbox"}});
  root.add("svg", {}).add("path", {{"d", "M0 0"}});
  EXPECT_EQ(page.html(), "<div><p></p><input type=\"checkbox\"/><svg><path d=\"M0 0\"/></svg></div>");
}

TEST(Element, AValueIsSetInPlaceOfAnEarlierOne) {
  Fragment page;
  page.root().add("p", {{"class", "a"}}).set("class", "b");
  EXPECT_EQ(page.html(), "<p class=\"b\"></p>");
}

TEST(Element, NumbersAreShort) {
  EXPECT_EQ(number(1.0), "1");
  EXPECT_EQ(number(0.126), "0.13");
  EXPECT_EQ(number(-0.001), "0");
  EXPECT_EQ(percent(1.0 / 3), "33.33%");
}

TEST(TimeScale, AWeekInWhichTheClockChangesHasItsRealLength) {
  job::Plan plan = sample::table();
  plan.from = plan.shop.zone.to_instant(LocalTime(LocalDay(date::year(2027) / 3 / 10)));
  for (job::Event& event : plan.events) event.start = event.end = plan.from;
  plan.until = plan.from + std::chrono::hours(24);
  plan.pieces.clear();
  const std::vector<Week> weeks = weeks_of(plan);
  ASSERT_EQ(weeks.size(), 1U);
  EXPECT_EQ(Hours(weeks[0].until - weeks[0].from).count(), 167);  // 14 March 2027
  EXPECT_EQ(weeks[0].share(weeks[0].from), 0);
  EXPECT_EQ(weeks[0].share(weeks[0].until), 1);
}

TEST(TimeScale, NightsAndClosedDays) {
  const job::Plan plan = planner::make_plan(tests::make_job(), {tests::monday()});
  const std::vector<Week> weeks = weeks_of(plan);
  ASSERT_FALSE(weeks.empty());
  int nights = 0, days = 0;
  for (const Closed& closed : closed_in(plan, weeks[0])) ++(closed.whole_day ? days : nights);
  EXPECT_EQ(days, 1);    // from Friday's end
  EXPECT_EQ(nights, 5);  // Monday's first hours too; breaks are not told
}

/// Every coat on a face is drawn on that face's row, from its start to its end, and nothing overlaps.
void expect_drawn(const job::Plan& plan) {
  const std::vector<Row> rows = rows_of(plan);
  std::map<const job::Event*, std::size_t> drawn;
  for (const Row& row : rows) {
    for (std::size_t i = 0; i < row.stretches.size(); ++i) {
      const Stretch& s = row.stretches[i];
      ASSERT_LT(s.from, s.until) << row.part << " " << row.faces;
      const Instant before = i > 0 ? row.stretches[i - 1].until : s.from;
      ASSERT_GE(s.from, before) << row.part << " " << row.faces;
      if (s.state == State::applied) {
        EXPECT_EQ(s.from, s.event->start);
        EXPECT_EQ(s.until, s.event->end);
        ++drawn[s.event];
      }
    }
  }
  for (const job::Event& event : plan.events) {
    EXPECT_EQ(job::is_coat(event.kind), drawn.count(&event) > 0) << event.id;
  }
}

TEST(Timeline, EveryCoatIsOnItsFacesAndNothingOverlaps) {
  expect_drawn(sample::table());
  const job::Job job = several(3);
  expect_drawn(planner::make_plan(job, {tests::monday()}));
}

TEST(Timeline, AFaceThatIsLeftOutHasARowOfItsOwn) {
  std::set<std::string> faces;
  for (const Row& row : rows_of(sample::with_hole())) {
    if (row.part == "top") faces.insert(row.faces);
  }
  EXPECT_TRUE(faces.count("underside"));
}

TEST(Timeline, TheWindowOpensByTheLateSideAndClosesByTheEarlyOne) {
  tests::JobKnobs knobs;
  knobs.scuff_step = false;
  const job::Plan plan = planner::make_plan(tests::make_job(knobs), {tests::monday()});
  int opened = 0;
  for (const Row& row : rows_of(plan)) {
    for (const Stretch& s : row.stretches) {
      if (s.state != State::open || !job::is_coat(s.event->kind)) continue;
      ++opened;
      EXPECT_GE(s.from, *s.event->stages.slow[finish::Stage::recoat]);
      EXPECT_LE(s.until, s.event->stages.fast[finish::Stage::recoat_close].value_or(s.until));
    }
  }
  EXPECT_GT(opened, 0);
}

std::vector<piece::Shape> shapes() {
  using namespace piece;
  return {
      Board{Metres(1.6), Metres(0.7), Metres(0.02)},
      RoundTop{Metres(0.9), Metres(0.03)},
      TaperedLeg{Metres(0.7), Metres(0.05), Metres(0.03)},
      TurnedLeg{{{Metres(0), Metres(0.05)}, {Metres(0.3), Metres(0.03)}, {Metres(0.7), Metres(0.02)}}},
      RoundTube{Metres(1), Metres(0.03), true},
      RectTube{Metres(1), Metres(0.05), Metres(0.02), true},
      Case{Metres(0.9), Metres(1.8), Metres(0.3), Metres(0.02)},
      Door{Metres(0.5), Metres(0.7), Metres(0.02), Metres(0.06), Metres(0.008)},
      Bowl{Metres(0.25), Metres(0.09), Metres(0.01)},
      Vessel{{{Metres(0), Metres(0.06)}, {Metres(0.12), Metres(0.09)}, {Metres(0.2), Metres(0.05)}}, Metres(0.005), Metres(0.18)},
      FreeArea{
          {{"all round", SquareMetres(0.5), {}}, {"under", SquareMetres(0.1), {}, false, false}}, Metres(1), Metres(0.3), Metres(0.05)}};
}

TEST(Views, EveryFaceOfEveryShapeIsSeen) {
  for (const piece::Shape& shape : shapes()) {
    std::set<std::string> seen, faces;
    for (const View& view : views_of(shape, {100})) {
      for (const Patch& patch : view.patches) seen.insert(patch.face);
    }
    for (const piece::Face& face : piece::faces_of(shape)) faces.insert(face.name);
    EXPECT_EQ(seen, faces) << piece::shape_word(shape);
  }
}

TEST(Views, NothingSticksOut) {
  for (const piece::Shape& shape : shapes()) {
    for (const View& view : views_of(shape, {100})) {
      for (const Patch& patch : view.patches) {
        for (const Loop& loop : patch.loops) {
          for (const Point& p : loop.corners) {
            EXPECT_GE(p.x - loop.radius, 0) << piece::shape_word(shape) << " " << view.title << " " << patch.face;
            EXPECT_GE(p.y - loop.radius, 0) << piece::shape_word(shape) << " " << view.title << " " << patch.face;
            EXPECT_LE(p.x + loop.radius, view.width) << piece::shape_word(shape) << " " << view.title << " " << patch.face;
            EXPECT_LE(p.y + loop.radius, view.height) << piece::shape_word(shape) << " " << view.title << " " << patch.face;
          }
        }
      }
    }
  }
}

TEST(Views, BroadFacesHaveTheirOwnProportions) {
  const View view = views_of(piece::Board{Metres(2), Metres(0.5), Metres(0.02)}, {100}).front();
  EXPECT_NEAR(view.patches.front().room / view.patches.front().tall, 4, 1e-9);
}

std::string page_of(const job::Job& job) { return plan_page(job, planner::make_plan(job, {tests::monday()}), {}, job.shop.units); }

TEST(Page, IsTheSameEveryTime) { EXPECT_EQ(page_of(tests::make_job()), page_of(tests::make_job())); }

TEST(Page, NamesThatTryToBeMarkupStayText) {
  job::Job job = several(1);
  job.order.name = job.shop.name = evil;
  for (job::OrderPiece& piece : job.order.pieces) {
    piece.piece.name = evil;
    for (piece::Part& part : piece.piece.parts) part.name = evil;
  }
  for (auto& [id, product] : job.catalogue.products) product.name = evil;
  const std::string html = page_of(job);
  EXPECT_EQ(html.find("<script>alert"), std::string::npos);
  EXPECT_NE(html.find("&lt;script&gt;alert"), std::string::npos);
  EXPECT_EQ(html.find("</style>"), html.rfind("</style>"));
}

TEST(Page, NothingIsFetched) {
  const std::string html = page_of(tests::make_job());
  for (const char* fetched : {"src=", "https://", "@import", "url(//", "url(http", "fetch("}) {
    EXPECT_EQ(html.find(fetched), std::string::npos) << fetched;
  }
  EXPECT_NE(html.find("default-src 'none'"), std::string::npos);
}

TEST(Page, AHundredPiecesAreNotTooHeavy) { EXPECT_LT(page_of(several(100)).size(), 2'000'000U); }

}  // namespace
}  // namespace coatday::report::page
