// The small plan is sound. Then it is broken in every way, each of which has its own code.

#include "checker/check.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <set>

#include "checker/checks.h"
#include "tests/checker/broken.h"

namespace coatday::checker::test {
namespace {

using finish::Stage;

TEST_P(Broken, IsTold) {
  Small small = small_plan();
  GetParam().mutate(small);
  small.count_visits();
  Codes codes;
  std::string messages;
  for (const checker::Breach& breach : checker::check(small.plan, small.job)) {
    codes.insert(breach.code);
    messages += breach.code + ": " + breach.message + "\n";
  }
  EXPECT_EQ(codes, GetParam().codes) << messages;
}

void add_rule(Small& s, finish::Verdict verdict, Hours wait) {
  s.job.catalogue.over = {
      {.upper = "clear", .under = "clear", .verdict = verdict, .wait = wait, .barriers = {}, .source = "", .where = {}}};
}

/// The recoat window closes between the two coats of the underside alone.
void narrow_window(Small& s) {
  s.product().rows.front().hours[Stage::recoat_close] = Hours(4 * 1.4);  // 4 h by the fast clock
  s.settle();
}

INSTANTIATE_TEST_SUITE_P(Sound, Broken,
                         testing::Values(Break{"as it is", [](Small&) {}, {}},
                                         Break{"not feasible says nothing",
                                               [](Small& s) {
                                                 s.plan.events.clear();
                                                 s.plan.status = job::Status::not_found;
                                               },
                                               {}},
                                         Break{"a missed window made good by a scuff",
                                               [](Small& s) {
                                                 narrow_window(s);
                                                 scuff_underside(s);
                                               },
                                               {}},
                                         Break{"a done step with its record", [](Small& s) { say_done(s, "table/leg.1-2/sand"); }, {}},
                                         Break{"what is done is not judged",
                                               [](Small& s) {
                                                 say_done(s, "table/leg.1-2/sand");
                                                 s.move("table/leg.1-2/sand", at(0, 7));
                                                 s.job.order.history[0].start = at(0, 7);
                                                 s.job.order.history[0].end = at(0, 7, 30);
                                               },
                                               {}},
                                         Break{"times rounded to the minute",
                                               [](Small& s) {
                                                 for (job::Event& e : s.plan.events)
                                                   for (auto& stage : e.stages.expected.values)
                                                     if (stage) *stage += std::chrono::seconds(59);
                                               },
                                               {}},
                                         Break{
                                             "a rule that allows", [](Small& s) { add_rule(s, finish::Verdict::allowed, Hours(99)); }, {}},
                                         Break{"clean up shared with the coat before",
                                               [](Small& s) { s.event("table/leg.1-2/clear-2").clean_up = Minutes(0); },
                                               {}},
                                         Break{"pot life with mixes enough",
                                               [](Small& s) {
                                                 s.product().pot_life = Hours(0.1);
                                                 for (job::Event& e : s.plan.events) e.mixes = e.product.empty() ? 0 : 3;
                                               },
                                               {}}),
                         name_of);

INSTANTIATE_TEST_SUITE_P(
    Steps, Broken,
    testing::Values(
        Break{"dry step missing", [](Small& s) { s.erase("table/leg.1-2/sand"); }, {"step-missing"}},
        Break{"show face without its last coat",
              [](Small& s) {
                auto& faces = s.event("table/top/clear-2/second").faces;
                faces.erase(std::find(faces.begin(), faces.end(), s.face("top", "face")));
                s.settle();
              },
              {"step-missing", "face-left-behind"}},
        Break{"step twice",
              [](Small& s) {
                job::Event& again = s.add_like("table/leg.1-2/sand", "table/leg.1-2/sand/second");
                again.start = at(0, 8, 30);
                again.end = at(0, 9);
              },
              {"step-twice"}},
        Break{"excepted face coated",
              [](Small& s) {
                s.event("table/leg.1-2/clear-1").faces.push_back(s.face("leg", "top end"));
                s.settle();
              },
              {"exception-ignored"}},
        Break{"exception made up", [](Small& s) { s.plan.faces[s.face("leg", "top end")].exception->coats = 1; }, {"exception-differs"}},
        Break{"step for show faces on all", [](Small& s) { s.step("sand").faces = finish::StepFaces::show; }, {"step-not-for-face"}},
        Break{"another kind", [](Small& s) { s.event("table/leg.1-2/clear-1").kind = job::EventKind::seal; }, {"step-differs"}},
        Break{"another product in the schedule",
              [](Small& s) {
                s.job.catalogue.products["other"] = s.product();
                s.step("clear-1").product = "other";
              },
              {"step-differs"}},
        Break{"step unknown",
              [](Small& s) {
                job::Event& polish = s.add_like("table/leg.1-2/sand", "table/leg.1-2/polish");
                polish.step = "polish";
                polish.start = at(0, 8, 30);
                polish.end = at(0, 9);
              },
              {"step-unknown"}},
        Break{"scuff before nothing",
              [](Small& s) {
                scuff_underside(s);
                s.plan.events.back().step = "sand-scuff";
                identify(s.plan.events.back(), "table/top/sand-scuff");
              },
              {"step-unknown"}},
        Break{"steps swapped",
              [](Small& s) {
                s.step("clear-2").wait.reset();
                std::swap(s.event("table/leg.1-2/clear-1").step, s.event("table/leg.1-2/clear-2").step);
              },
              {"step-out-of-order"}},
        Break{"a face in two loads",
              [](Small& s) { identify(s.event("table/leg.1-2/clear-2"), "table/leg.1-2+b/clear-2"); },
              {"load-items-differ", "load-mixed", "set-aside-differs"}},
        Break{"more items than the plan has", [](Small& s) { s.job.order.pieces[0].piece.parts[1].count = 3; }, {"items-uncovered"}},
        Break{"fewer items than the plan has", [](Small& s) { s.job.order.pieces[0].piece.parts[1].count = 1; }, {"items-doubled"}},
        Break{"a face out of the ledger", [](Small& s) { s.event("table/leg.1-2/sand").faces.push_back(99); }, {"broken-reference"}},
        Break{"an event twice", [](Small& s) { s.add_like("shop/mill", "shop/mill"); }, {"broken-reference"}},
        Break{"an id that means another step",
              [](Small& s) { s.event("table/leg.1-2/sand").id = "table/leg.1-2/sanded"; },
              {"broken-reference"}},
        Break{"a part that is not", [](Small& s) { s.plan.faces[0].part_id = "shelf"; }, {"broken-reference"}},
        Break{"a place for no event", [](Small& s) { s.plan.places[0].event = 99; }, {"broken-reference"}},
        Break{"an end before its start", [](Small& s) { s.event("shop/mill").end = at(2, 7); }, {"broken-reference"}}),
    name_of);

INSTANTIATE_TEST_SUITE_P(
    Faces, Broken,
    testing::Values(
        Break{"faces too far apart", [](Small& s) { s.job.shop.both_faces_within = Hours(1); }, {"faces-apart"}},
        Break{"ledger counts wrong", [](Small& s) { s.plan.faces[0].coats = 3; }, {"ledger-differs"}},
        Break{"ledger hides what lies across", [](Small& s) { s.plan.faces[0].opposite.reset(); }, {"ledger-differs"}},
        Break{"film denied", [](Small& s) { s.event("table/leg.1-2/clear-1").film = false; }, {"ledger-differs"}},
        Break{"coat number wrong", [](Small& s) { s.event("table/leg.1-2/clear-2").coat = 3; }, {"coat-number-differs"}},
        Break{"not turned for the other side", [](Small& s) { s.erase("table/top/clear-1/turn"); }, {"not-turned"}},
        Break{"not turned back",
              [](Small& s) {
                s.erase("table/top/clear-2/turn-back");
                place_of(s, "table/top/clear-1/second").until = at(0, 15, 35);
              },
              {"not-turned"}},
        Break{"turned while wet", [](Small& s) { s.move("table/top/clear-1/turn", at(0, 11, 5)); }, {"turned-too-early"}},
        Break{"laid parts turn when dry to handle",
              [](Small& s) {
                s.job.order.pieces[0].piece.parts[0].support = piece::Support::laid;
                for (job::Event& e : s.plan.events) {
                  if (e.support == piece::Support::points) e.support = piece::Support::laid;
                }
                for (job::PlaceUse& use : s.plan.places) {
                  if (use.place == "points 1") use.place = "rack";
                }
              },
              {"turned-too-early"}},
        Break{"hooks turned",
              [](Small& s) {
                job::Event& turn = s.add_like("table/top/clear-1/turn", "table/leg.1-2/clear-2/turn");
                turn.step = "clear-2";
                turn.start = at(0, 13, 35);
                turn.end = at(0, 13, 45);
              },
              {"hooks-turned"}},
        Break{"both sides at once",
              [](Small& s) {
                const std::size_t edge = s.face("top", "front edge");
                auto& second = s.event("table/top/clear-1/second").faces;
                second.erase(std::find(second.begin(), second.end(), edge));
                s.event("table/top/clear-1/first").faces.push_back(edge);
                s.settle();
              },
              {"both-sides-at-once"}},
        Break{"too few to turn", [](Small& s) { s.job.order.pieces[0].piece.parts[0].turning_people = 2; }, {"too-few-people"}},
        Break{"turned too fast", [](Small& s) { s.job.shop.turning = Minutes(10); }, {"too-short"}},
        Break{"said to rest on something else",
              [](Small& s) { s.event("table/leg.1-2/clear-1").support = piece::Support::laid; },
              {"support-differs"}},
        Break{"a load in two hands", [](Small& s) { s.event("table/top/clear-2/turn-back").end = at(0, 15, 45); }, {"load-twice"}}),
    name_of);

INSTANTIATE_TEST_SUITE_P(
    Waits, Broken,
    testing::Values(
        Break{"before recoat",
              [](Small& s) {
                s.step("clear-2").wait.reset();
                s.move("table/leg.1-2/clear-2", at(0, 13, 5));
                s.settle();
              },
              {"too-early"}},
        Break{"before the stage that the step asks for", [](Small& s) { s.step("clear-2").after_stage = Stage::pack; }, {"too-early"}},
        Break{"before the step's own wait", [](Small& s) { s.step("clear-2").wait = Hours(3); }, {"too-early"}},
        Break{"before a rule's longer wait", [](Small& s) { add_rule(s, finish::Verdict::longer_wait, Hours(20)); }, {"too-early"}},
        Break{"scuffed before it sands",
              [](Small& s) {
                scuff_underside(s);
                s.product().rows.front().hours[Stage::sand] = Hours(4.5);
                s.settle();
              },
              {"too-early"}},
        Break{"over what it may not", [](Small& s) { add_rule(s, finish::Verdict::never, Hours(0)); }, {"not-over"}},
        Break{"without a barrier", [](Small& s) { add_rule(s, finish::Verdict::barrier, Hours(0)); }, {"not-over"}},
        Break{"window missed", narrow_window, {"window-missed"}},
        Break{"window missed and another face scuffed",
              [](Small& s) {
                narrow_window(s);
                scuff_underside(s);
                s.plan.events.back().faces = {s.face("top", "face")};
                s.product().rows.front().hours[Stage::sand] = Hours(1);
                s.settle();
              },
              {"window-missed"}},
        Break{"step begins too late", [](Small& s) { s.step("clear-2").within = Hours(1); }, {"step-too-late"}},
        Break{"a stage too soon",
              [](Small& s) { *s.event("table/leg.1-2/clear-1").stages.expected[Stage::recoat] -= Minutes(5); },
              {"stage-differs"}},
        Break{"a safe time too soon",
              [](Small& s) { *s.event("table/leg.1-2/clear-1").stages.slow[Stage::sand] -= Minutes(5); },
              {"stage-differs"}},
        Break{"an earliest time too late",
              [](Small& s) { *s.event("table/leg.1-2/clear-1").stages.fast[Stage::recoat] += Minutes(5); },
              {"stage-differs"}},
        Break{"a stage left out",
              [](Small& s) { s.event("table/leg.1-2/clear-1").stages.expected[Stage::full_cure].reset(); },
              {"stage-differs"}},
        Break{"too cold to go on", [](Small& s) { s.product().limits.coldest = Celsius(24); }, {"air-outside-limits", "can-too-cold"}},
        Break{"too hot to go on", [](Small& s) { s.product().limits.hottest = Celsius(22); }, {"air-outside-limits"}},
        Break{"too damp to go on", [](Small& s) { s.product().limits.dampest = RelativeHumidity(0.4); }, {"air-outside-limits"}},
        Break{"too near the dew point", [](Small& s) { s.product().limits.dew_point_margin = Kelvins(12); }, {"air-outside-limits"}},
        Break{"near enough to blush", [](Small& s) { s.product().limits.blush_margin = Kelvins(12); }, {"air-outside-limits"}},
        Break{"too cold after",
              [](Small& s) {
                s.product().limits.hold = Hours(24);
                s.product().limits.hold_above = Celsius(24);
              },
              {"too-cold-after"}},
        Break{"in unknown air", [](Small& s) { s.plan.air = reference_air(at(0, 12), s.plan.until); }, {"no-air", "surface-differs"}},
        Break{"dust in the air", [](Small& s) { s.job.shop.light_dust_settles = Hours(1); }, {"dust-on-wet"}},
        Break{"dust that the plan keeps quiet about",
              [](Small& s) { s.order_work("glue-up").work.dust = shop::Dust::heavy; },
              {"dust-on-wet"}},
        Break{"sparks in vapour", [](Small& s) { s.move("shop/weld", at(0, 14)); }, {"hot-near-vapour"}},
        Break{"sparks 29 minutes after vapour",
              [](Small& s) {
                const Instant firm = *s.event("table/top/clear-2/second").stages.expected[Stage::handle];
                const Hours between = s.event("shop/weld").start - firm;
                s.job.shop.hot_work_clear = between + Minutes(3);
              },
              {"hot-near-vapour"}},
        Break{"heat that the plan keeps quiet about",
              [](Small& s) {
                s.move("shop/weld", at(0, 14));
                s.event("shop/weld").hot = false;
              },
              {"hot-near-vapour"}}),
    name_of);

TEST(Checks, HaveNamesOfTheirOwnAndFindNothingInASoundPlan) {
  const Small small = small_plan();
  const PlanFacts facts(small.plan, small.job);
  std::set<std::string_view> names;
  for (const Check& one : checks()) {
    EXPECT_TRUE(names.insert(one.name).second) << one.name;
    Breaches breaches;
    one.run(facts, breaches);
    EXPECT_TRUE(breaches.empty()) << one.name;
  }
}

TEST(Message, NamesTheEventAndItsTimesInTheShopsZone) {
  Small small = small_plan();
  small.job.shop.zone = *Zone::find("Europe/Berlin");
  for (shop::Shift& shift : small.job.shop.week) {
    shift.from += std::chrono::hours(1);
    shift.until += std::chrono::hours(1);
  }
  small.step("clear-2").after_stage = Stage::pack;
  const auto breaches = checker::check(small.plan, small.job);
  ASSERT_FALSE(breaches.empty());
  EXPECT_EQ(breaches.front().message,
            "clear-2 of leg x2 (Mon 11 Jan 15:00 to Mon 11 Jan 15:40): not before Thu 14 Jan 07:22: clear-1 of leg x2 "
            "(Mon 11 Jan 11:30 to Mon 11 Jan 12:10) reaches pack at the safe time");
}

class Steady final : public climate::AirSource {
 public:
  explicit Steady(double celsius) : air_{Celsius(celsius), RelativeHumidity(0.5)} {}
  [[nodiscard]] climate::Air at(Instant) const override { return air_; }
  [[nodiscard]] std::string describe(Units) const override { return "steady"; }

 private:
  climate::Air air_;
};

/// What the checker says about the mixing of the small plan's finish, which stands 9 min and lasts 18, in this air.
Codes mixing_at(double celsius) {
  Small s = small_plan();
  s.product().pot_life = Hours(0.3);
  s.product().two_part = {1, 1, Hours(0.15)};
  for (job::Event& e : s.plan.events) e.mixes = e.product.empty() ? 0 : 1;
  s.plan.air = climate::AirSeries(Steady(celsius), s.plan.air.begin(), s.plan.air.end());
  Codes codes;
  for (const checker::Breach& breach : checker::check(s.plan, s.job)) {
    if (breach.code == "pot-life" || breach.code == "induction") codes.insert(breach.code);
  }
  return codes;
}

TEST(Mixing, LastsLessLongInTheHeatAndStandsLongerInTheCold) {
  EXPECT_EQ(mixing_at(23), Codes{});
  EXPECT_EQ(mixing_at(34), Codes{"pot-life"});
  EXPECT_EQ(mixing_at(16), Codes{"induction"});
}

/// A coat that its step wants a little thicker than the plan has it.
TEST(Film, ThatIsThickerThanToldDriesLonger) {
  Small s = small_plan();
  s.step("clear-1").wet_film = Micrometres(130);
  Codes codes;
  for (const checker::Breach& breach : checker::check(s.plan, s.job)) codes.insert(breach.code);
  EXPECT_TRUE(codes.contains("film-differs"));
  EXPECT_TRUE(codes.contains("volume-differs"));
  EXPECT_TRUE(codes.contains("stage-differs"));
}

TEST(Visits, AreCountedAnew) {
  Small s = small_plan();
  ASSERT_GT(s.plan.visits.size(), 1U);
  s.plan.visits.pop_back();
  Codes codes;
  for (const checker::Breach& breach : checker::check(s.plan, s.job)) codes.insert(breach.code);
  EXPECT_EQ(codes, Codes{"visits-differ"});
}

}  // namespace
}  // namespace coatday::checker::test
