// The small plan is sound. Then it is broken in every way, each of which has its own code.

#include "checker/check.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <ostream>
#include <set>

#include "tests/checker/small_plan.h"

namespace coatday::checker::test {
namespace {

using finish::Stage;
using Codes = std::set<std::string>;

struct Break {
  std::string name;
  std::function<void(Small&)> mutate;
  Codes codes;
};
void PrintTo(const Break& b, std::ostream* out) { *out << b.name; }

class Broken : public testing::TestWithParam<Break> {};

TEST_P(Broken, IsTold) {
  Small small = small_plan();
  GetParam().mutate(small);
  Codes codes;
  std::string messages;
  for (const checker::Breach& breach : checker::check(small.plan, small.job)) {
    codes.insert(breach.code);
    messages += breach.code + ": " + breach.message + "\n";
  }
  EXPECT_EQ(codes, GetParam().codes) << messages;
}

std::string name_of(const testing::TestParamInfo<Break>& info) {
  std::string name;
  for (const char c : info.param.name)
    if (c != '\'') name += c == ' ' ? '_' : c;
  return name;
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

void scuff_underside(Small& s) {
  const std::size_t underside = s.face("top", "underside");
  job::Event& scuff = s.add_like("table/top/sand", "table/top/clear-2-scuff");
  scuff.kind = job::EventKind::scuff;
  scuff.step = "clear-2-scuff";
  scuff.faces = {underside};
  scuff.start = at(0, 15, 10);
  scuff.end = at(0, 15, 15);
}

job::PlaceUse& place_of(Small& s, std::string_view event) {
  const std::size_t i = s.index(event);
  return *std::find_if(s.plan.places.begin(), s.plan.places.end(), [&](const job::PlaceUse& use) { return use.event == i; });
}

/// One leg beside the top on its points, where no hung part should be.
void lay_a_leg_at(Small& s, Metres x) {
  job::PlaceUse& use = place_of(s, "table/leg/clear-2");
  use.place = "points 1";
  use.laid.front().x = x;
}

void say_done(Small& s, std::string_view id) {
  s.event(id).done = true;
  s.job.order.history.push_back({std::string(id), s.event(id).start, s.event(id).end, {}});
}

INSTANTIATE_TEST_SUITE_P(
    Sound, Broken,
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
                    Break{"a done step with its record", [](Small& s) { say_done(s, "table/leg/sand"); }, {}},
                    Break{"what is done is not judged",
                          [](Small& s) {
                            say_done(s, "table/leg/sand");
                            s.move("table/leg/sand", at(0, 7));
                            s.job.order.history[0].start = at(0, 7);
                            s.job.order.history[0].end = at(0, 7, 30);
                          },
                          {}},
                    Break{"times rounded to the minute",
                          [](Small& s) {
                            for (job::Event& e : s.plan.events)
                              for (auto& stage : e.stages.values)
                                if (stage) *stage += std::chrono::seconds(59);
                          },
                          {}},
                    Break{"a rule that allows", [](Small& s) { add_rule(s, finish::Verdict::allowed, Hours(99)); }, {}},
                    Break{"clean up shared with the coat before", [](Small& s) { s.event("table/leg/clear-2").clean_up = Minutes(0); }, {}},
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
        Break{"dry step missing", [](Small& s) { s.erase("table/leg/sand"); }, {"step-missing"}},
        Break{"show face without its last coat",
              [](Small& s) {
                auto& faces = s.event("table/top/clear-2/second").faces;
                faces.erase(std::find(faces.begin(), faces.end(), s.face("top", "face")));
                s.settle();
              },
              {"step-missing", "face-left-behind"}},
        Break{"step twice",
              [](Small& s) {
                job::Event& again = s.add_like("table/leg/sand", "table/leg/sand/again");
                again.start = at(0, 8, 30);
                again.end = at(0, 9);
              },
              {"step-twice"}},
        Break{"excepted face coated",
              [](Small& s) {
                s.event("table/leg/clear-1").faces.push_back(s.face("leg", "top end"));
                s.settle();
              },
              {"exception-ignored"}},
        Break{"exception made up", [](Small& s) { s.plan.faces[s.face("leg", "top end")].exception->coats = 1; }, {"exception-differs"}},
        Break{"step for show faces on all", [](Small& s) { s.step("sand").faces = finish::StepFaces::show; }, {"step-not-for-face"}},
        Break{"another kind", [](Small& s) { s.event("table/leg/clear-1").kind = job::EventKind::seal; }, {"step-differs"}},
        Break{"another product in the schedule",
              [](Small& s) {
                s.job.catalogue.products["other"] = s.product();
                s.step("clear-1").product = "other";
              },
              {"step-differs"}},
        Break{"step unknown",
              [](Small& s) {
                job::Event& polish = s.add_like("table/leg/sand", "table/leg/polish");
                polish.step = "polish";
                polish.start = at(0, 8, 30);
                polish.end = at(0, 9);
              },
              {"step-unknown"}},
        Break{"scuff before nothing",
              [](Small& s) {
                scuff_underside(s);
                s.plan.events.back().step = "sand-scuff";
                s.plan.events.back().id = "table/top/sand-scuff";
              },
              {"step-unknown"}},
        Break{"steps swapped",
              [](Small& s) {
                s.step("clear-2").wait.reset();
                std::swap(s.event("table/leg/clear-1").step, s.event("table/leg/clear-2").step);
              },
              {"step-out-of-order"}},
        Break{"a face in two loads",
              [](Small& s) { s.event("table/leg/clear-2").id = "table/leg-b/clear-2"; },
              {"load-mixed", "place-left-early"}},
        Break{"more items than the plan has", [](Small& s) { s.job.order.pieces[0].piece.parts[1].count = 3; }, {"items-uncovered"}},
        Break{"fewer items than the plan has", [](Small& s) { s.job.order.pieces[0].piece.parts[1].count = 1; }, {"items-doubled"}},
        Break{"a face out of the ledger", [](Small& s) { s.event("table/leg/sand").faces.push_back(99); }, {"broken-reference"}},
        Break{"an event twice", [](Small& s) { s.add_like("shop/mill", "shop/mill"); }, {"broken-reference"}},
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
        Break{"film denied", [](Small& s) { s.event("table/leg/clear-1").film = false; }, {"ledger-differs"}},
        Break{"coat number wrong", [](Small& s) { s.event("table/leg/clear-2").coat = 3; }, {"coat-number-differs"}},
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
                job::Event& turn = s.add_like("table/top/clear-1/turn", "table/leg/clear-2/turn");
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
              [](Small& s) { s.event("table/leg/clear-1").support = piece::Support::laid; },
              {"support-differs"}},
        Break{"a load in two hands", [](Small& s) { s.event("table/top/clear-2/turn-back").end = at(0, 15, 45); }, {"load-twice"}}),
    name_of);

INSTANTIATE_TEST_SUITE_P(
    Waits, Broken,
    testing::Values(
        Break{"before recoat",
              [](Small& s) {
                s.step("clear-2").wait.reset();
                s.move("table/leg/clear-2", at(0, 13, 5));
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
        Break{"a stage too soon", [](Small& s) { *s.event("table/leg/clear-1").stages[Stage::recoat] -= Minutes(5); }, {"stage-differs"}},
        Break{"a safe time too soon",
              [](Small& s) { *s.event("table/leg/clear-1").late_stages[Stage::sand] -= Minutes(5); },
              {"stage-differs"}},
        Break{"an earliest time too late",
              [](Small& s) { *s.event("table/leg/clear-1").early_stages[Stage::recoat] += Minutes(5); },
              {"stage-differs"}},
        Break{"a stage left out", [](Small& s) { s.event("table/leg/clear-1").stages[Stage::full_cure].reset(); }, {"stage-differs"}},
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
        Break{"heat that the plan keeps quiet about",
              [](Small& s) {
                s.move("shop/weld", at(0, 14));
                s.event("shop/weld").hot = false;
              },
              {"hot-near-vapour"}}),
    name_of);

/// The legs come from elsewhere, are brought in after a sanding that may be done cold, and coated at half past ten.
job::Event& carry_legs_in(Small& s, Celsius from, Instant start) {
  for (piece::Part& part : s.job.order.pieces[0].piece.parts) {
    if (part.id == "leg") part.kept_at = from;
  }
  job::Event& in = s.add_like("table/leg/sand", "table/leg/carry-in");
  in.step.clear();
  in.faces.clear();
  in.dust = shop::Dust::none;
  in.people = 0;
  in.start = start;
  in.end = start + Minutes(5);
  return in;
}

INSTANTIATE_TEST_SUITE_P(
    Surfaces, Broken,
    testing::Values(
        Break{"said to lag less than it does", [](Small& s) { s.event("table/leg/clear-1").bodies = {Hours(0.25)}; }, {"bodies-differ"}},
        Break{"a surface warmer than its air",
              [](Small& s) {
                std::vector<climate::AirRow> rows(s.plan.air.rows().begin(), s.plan.air.rows().end());
                rows[20].air.temperature = Celsius(25);
                s.plan.surfaces[Minutes(27)] = climate::Surface(climate::AirSeries(rows), Minutes(27), s.plan.air.begin());
              },
              {"surface-differs"}},
        Break{"a surface left out", [](Small& s) { s.plan.surfaces.erase(Minutes(33)); }, {"surface-differs"}},
        Break{"warm in good time", [](Small& s) { carry_legs_in(s, Celsius(18), at(0, 8, 30)); }, {}},  // 5 K exp(-1.92 h / 33 min)
        Break{"carried in and coated cold", [](Small& s) { carry_legs_in(s, Celsius(2), at(0, 8, 30)); }, {"not-warm-yet"}},
        Break{"kept in the cold and never carried in",
              [](Small& s) {
                carry_legs_in(s, Celsius(4), at(0, 8, 30));
                s.plan.events.pop_back();
              },
              {"not-carried-in"}},
        Break{"carried in after its coat", [](Small& s) { carry_legs_in(s, Celsius(18), at(0, 11, 30)); }, {"not-carried-in"}},
        Break{"a can never brought in", [](Small& s) { s.job.shop.finishes_kept_at = Celsius(8); }, {"not-carried-in"}}),
    name_of);

/// Cold until the plan begins, and then as always.
class ColdNight final : public climate::AirSource {
 public:
  [[nodiscard]] climate::Air at(Instant t) const override {
    return t < test::at(0, 0) ? climate::Air{Celsius(5), RelativeHumidity(0.5)} : finish::reference_air;
  }
  [[nodiscard]] std::string describe(Units) const override { return "a cold night"; }
};

std::string breaches_after_a_cold_night(const std::function<void(Small&)>& mutate) {
  Small small = small_plan();
  small.job.air = [](Instant, Instant) { return std::make_unique<ColdNight>(); };
  mutate(small);
  std::string codes;
  for (const checker::Breach& breach : checker::check(small.plan, small.job)) codes += breach.code + " ";
  return codes;
}

TEST(Check, JudgesSurfaceAndCanAfterAColdNight) {
  const auto thick = [](Small& s) {  // 80 mm: 1.8 h; at 10:30 still 0.05 K behind
    s.job.order.pieces[0].piece.parts[1].shape = piece::TaperedLeg{Metres(0.7), Metres(0.16), Metres(0.03)};
    s.product().limits.coldest = Celsius(22.99);
  };
  EXPECT_NE(breaches_after_a_cold_night(thick).find("air-outside-limits"), std::string::npos);
  const auto cold_can = [](Small& s) { s.product().limits.coldest = Celsius(22.7); };  // 18 K x exp(-10 h / 2.7 h) behind
  EXPECT_NE(breaches_after_a_cold_night(cold_can).find("can-too-cold"), std::string::npos);
  EXPECT_EQ(breaches_after_a_cold_night([](Small&) {}).find("can-too-cold"), std::string::npos);
}

INSTANTIATE_TEST_SUITE_P(
    Resources, Broken,
    testing::Values(
        Break{"outside hours", [](Small& s) { s.move("shop/weld", at(1, 7)); }, {"outside-hours"}},
        Break{"on a closed day",
              [](Small& s) {
                s.move("shop/weld", at(2, 14));
                s.job.shop.closed = {LocalDay(date::floor<date::days>(at(2, 0)).time_since_epoch())};
              },
              {"outside-hours"}},
        Break{"paused work that starts in the break", [](Small& s) { s.move("shop/stocktaking", at(1, 12, 30)); }, {"outside-hours"}},
        Break{"pause that the job does not allow", [](Small& s) { s.shop_work("stocktaking").may_pause = false; }, {"outside-hours"}},
        Break{"before the plan begins", [](Small& s) { s.plan.from = at(0, 8, 30); }, {"before-from"}},
        Break{"before the order begins", [](Small& s) { s.job.order.start = at(0, 8, 30); }, {"before-order-start"}},
        Break{"off the grid", [](Small& s) { s.move("shop/weld", at(1, 15, 2)); }, {"off-grid"}},
        Break{"more people than there are", [](Small& s) { s.event("table/leg/clear-1").people = 2; }, {"person-twice"}},
        Break{"set up left out", [](Small& s) { s.event("table/leg/clear-1").set_up = Minutes(0); }, {"set-up-left-out"}},
        Break{"clean up left out", [](Small& s) { s.event("table/leg/clear-1").clean_up = Minutes(0); }, {"clean-up-left-out"}},
        Break{"coat too fast",
              [](Small& s) {
                s.product().work_rates = {{finish::Method::brush, SquareMetresPerHour(1)}};
              },
              {"too-short"}},
        Break{"sanding too fast", [](Small& s) { s.step("sand").takes = Hours(1); }, {"too-short"}},
        Break{"nowhere to dry",
              [](Small& s) {
                const std::size_t i = s.index("table/top/clear-2/second");
                auto& uses = s.plan.places;
                uses.erase(std::remove_if(uses.begin(), uses.end(), [&](const job::PlaceUse& use) { return use.event == i; }), uses.end());
              },
              {"no-place"}},
        Break{"no such place", [](Small& s) { place_of(s, "table/top/clear-2/second").place = "shelf 1"; }, {"place-unknown"}},
        Break{"a number too high", [](Small& s) { place_of(s, "table/top/clear-2/second").place = "points 3"; }, {"place-unknown"}},
        Break{"the wrong kind of place", [](Small& s) { place_of(s, "table/top/clear-2/second").place = "rack"; }, {"place-wrong-kind"}},
        Break{"too few hooks",
              [](Small& s) { s.plan.places.erase(s.plan.places.begin() + (&place_of(s, "table/leg/clear-2") - s.plan.places.data())); },
              {"place-items-differ"}},
        Break{"too big for its place", [](Small& s) { s.job.shop.places[0].width = Metres(0.4); }, {"place-too-small"}},
        Break{"two on one hook",
              [](Small& s) { place_of(s, "table/leg/clear-2").laid.front().count = 2; },
              {"place-too-small", "place-items-differ"}},
        Break{"beside another load", [](Small& s) { lay_a_leg_at(s, Metres(1)); }, {"place-wrong-kind"}},
        Break{"on another load", [](Small& s) { lay_a_leg_at(s, Metres(0.5)); }, {"place-wrong-kind", "place-twice"}},
        Break{"over the end of its place", [](Small& s) { lay_a_leg_at(s, Metres(1.5)); }, {"place-wrong-kind", "place-too-small"}},
        Break{"on its own load",
              [](Small& s) {
                auto& laid = place_of(s, "table/top/clear-2/second").laid;
                laid.push_back(laid.front());
              },
              {"place-too-small", "place-items-differ"}},
        Break{"no gap", [](Small& s) { s.job.shop.gap = Metres(0.1); }, {"place-size-differs"}},
        Break{"smaller than it is",
              [](Small& s) { place_of(s, "table/top/clear-2/second").laid.front().along = Metres(0.9); },
              {"place-size-differs"}},
        Break{"another piece's part",
              [](Small& s) { place_of(s, "table/top/clear-2/second").laid.front().item = 9; },
              {"place-size-differs", "place-items-differ"}},
        Break{"a hook held twice", [](Small& s) { place_of(s, "table/leg/clear-2").place = "rail 2"; }, {"place-twice"}},
        Break{"a place held late", [](Small& s) { place_of(s, "table/top/clear-2/second").from += Minutes(10); }, {"place-held-late"}},
        Break{"a place left early", [](Small& s) { place_of(s, "table/top/clear-2/second").until -= Minutes(10); }, {"place-left-early"}}),
    name_of);

INSTANTIATE_TEST_SUITE_P(
    Work, Broken,
    testing::Values(Break{"fixed work moved", [](Small& s) { s.move("shop/mill", at(2, 9)); }, {"work-moved"}},
                    Break{"outside its window", [](Small& s) { s.shop_work("stocktaking").not_after = at(1, 13); }, {"outside-window"}},
                    Break{"before its window", [](Small& s) { s.shop_work("stocktaking").not_before = at(1, 12); }, {"outside-window"}},
                    Break{"work too short", [](Small& s) { s.shop_work("stocktaking").takes = Hours(2.5); }, {"too-short"}},
                    Break{"too few for the work", [](Small& s) { s.event("table/assembly").people = 1; }, {"too-few-people"}},
                    Break{"shop work missing", [](Small& s) { s.erase("shop/mill"); }, {"work-missing"}},
                    Break{"delivery missing", [](Small& s) { s.erase("table/delivery"); }, {"work-missing"}},
                    Break{"finishing before glue up", [](Small& s) { s.move("table/glue-up", at(0, 9)); }, {"work-order"}},
                    Break{"glue not rested", [](Small& s) { s.order_work("glue-up").work.rest = Hours(1); }, {"work-order"}},
                    Break{
                        "assembly before it bears it", [](Small& s) { s.order_work("assembly").stage = Stage::pack; }, {"work-too-early"}},
                    Break{"delivery before assembly has rested",
                          [](Small& s) { s.order_work("assembly").work.rest = Hours(72); },
                          {"work-order", "ready-differs"}},
                    Break{"delivery not last",
                          [](Small& s) {
                            std::swap(s.job.order.pieces[0].work[1], s.job.order.pieces[0].work[2]);
                            s.order_work("delivery").stage = Stage::handle;
                            s.move("table/delivery", at(1, 8));
                          },
                          {"delivery-not-last"}},
                    Break{"record lost",
                          [](Small& s) {
                            say_done(s, "table/leg/sand");
                            s.event("table/leg/sand").done = false;
                          },
                          {"history-lost"}},
                    Break{"record altered",
                          [](Small& s) {
                            say_done(s, "table/leg/sand");
                            s.job.order.history[0].end = at(0, 9);
                          },
                          {"history-lost"}},
                    Break{"record made up", [](Small& s) { s.event("table/leg/sand").done = true; }, {"history-invented"}}),
    name_of);

INSTANTIATE_TEST_SUITE_P(
    Amounts, Broken,
    testing::Values(
        Break{"volume wrong",
              [](Small& s) {
                auto& litres = s.event("table/leg/clear-1").volume;
                litres = *litres * 1.02;
              },
              {"volume-differs"}},
        Break{"no volume", [](Small& s) { s.event("table/leg/clear-1").volume.reset(); }, {"volume-differs"}},
        Break{"a method that the shop has not", [](Small& s) { s.job.shop.methods = {"roller"}; }, {"method-unknown"}},
        Break{"past the pot life", [](Small& s) { s.product().pot_life = Hours(0.01); }, {"pot-life"}},
        Break{"told thicker than its step", [](Small& s) { s.event("table/leg/clear-1").wet_film = Micrometres(110); }, {"film-differs"}},
        Break{
            "told to dry faster than its film does", [](Small& s) { s.event("table/leg/clear-1").drying.nominal = 0.9; }, {"film-differs"}},
        Break{"a room that is told otherwise", [](Small& s) { s.job.shop.ventilation.air_movement = 2; }, {"pace-differs"}},
        Break{"need too small",
              [](Small& s) {
                s.plan.purchase[0].need = Litres(0.1);
                s.plan.purchase[0].left_over = Litres(0.9);
              },
              {"need-too-small"}},
        Break{"too little bought",
              [](Small& s) {
                s.plan.purchase[0].buy[0].size = Litres(0.1);
                s.plan.purchase[0].left_over = Litres(0);
              },
              {"purchase-short"}},
        Break{"nothing bought", [](Small& s) { s.plan.purchase.clear(); }, {"purchase-missing"}},
        Break{"left over wrong", [](Small& s) { s.plan.purchase[0].left_over = Litres(0.5); }, {"purchase-differs"}},
        Break{"more on hand than on the shelf",
              [](Small& s) {
                s.plan.purchase[0].on_hand = Litres(0.5);
                s.plan.purchase[0].left_over += Litres(0.5);
              },
              {"stock-differs"}},
        Break{"handled too soon", [](Small& s) { *s.plan.pieces[0].ready.handle -= Minutes(10); }, {"ready-differs"}},
        Break{"packed too soon", [](Small& s) { *s.plan.pieces[0].ready.pack -= Minutes(10); }, {"ready-differs"}},
        Break{"delivered too soon", [](Small& s) { *s.plan.pieces[0].ready.deliver -= Minutes(10); }, {"ready-differs"}},
        Break{"used too soon", [](Small& s) { *s.plan.pieces[0].ready.light_use -= Minutes(10); }, {"ready-differs"}},
        Break{
            "cured too soon by the slow clock", [](Small& s) { *s.plan.pieces[0].ready_late.full_cure -= Minutes(10); }, {"ready-differs"}},
        Break{"no date where there is one", [](Small& s) { s.plan.pieces[0].ready.full_cure.reset(); }, {"ready-differs"}},
        Break{"slack wrong", [](Small& s) { *s.plan.pieces[0].slack += Hours(1); }, {"ready-differs"}},
        Break{"another promise", [](Small& s) { *s.plan.pieces[0].due += std::chrono::hours(24); }, {"ready-differs"}}),
    name_of);

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

/// What is told of the mixing of the small plan's finish, which stands 9 min and lasts 18, in this air.
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

}  // namespace
}  // namespace coatday::checker::test
