// The small plan broken in what follows from its steps: surfaces, places, volumes, purchase and dates.

#include "checker/check.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <set>

#include "tests/checker/broken.h"

namespace coatday::checker::test {
namespace {

using finish::Stage;

/// One leg beside the top on its points, where no hung part should be.
void lay_a_leg_at(Small& s, Metres x) {
  job::PlaceUse& use = place_of(s, "table/leg.1-2/clear-2");
  use.place = "points 1";
  use.laid.front().x = x;
}

/// The legs come from elsewhere, are brought in after a sanding that may be done cold, and coated at half past ten.
job::Event& carry_legs_in(Small& s, Celsius from, Instant start) {
  for (piece::Part& part : s.job.order.pieces[0].piece.parts) {
    if (part.id == "leg") part.kept_at = from;
  }
  job::Event& in = s.add_like("table/leg.1-2/sand", "table/leg.1-2/carry-in");
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
        Break{
            "said to lag less than it does", [](Small& s) { s.event("table/leg.1-2/clear-1").bodies = {Hours(0.25)}; }, {"bodies-differ"}},
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
  small.count_visits();
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
        Break{"more people than there are", [](Small& s) { s.event("table/leg.1-2/clear-1").people = 2; }, {"person-twice"}},
        Break{"set up left out", [](Small& s) { s.event("table/leg.1-2/clear-1").set_up = Minutes(0); }, {"set-up-left-out"}},
        Break{"clean up left out", [](Small& s) { s.event("table/leg.1-2/clear-1").clean_up = Minutes(0); }, {"clean-up-left-out"}},
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
              [](Small& s) { s.plan.places.erase(s.plan.places.begin() + (&place_of(s, "table/leg.1-2/clear-2") - s.plan.places.data())); },
              {"place-items-differ"}},
        Break{"too big for its place", [](Small& s) { s.job.shop.places[0].width = Metres(0.4); }, {"place-too-small"}},
        Break{"two on one hook",
              [](Small& s) { place_of(s, "table/leg.1-2/clear-2").laid.front().count = 2; },
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
        Break{"a hook held twice", [](Small& s) { place_of(s, "table/leg.1-2/clear-2").place = "rail 2"; }, {"place-twice"}},
        Break{"a place held late", [](Small& s) { place_of(s, "table/top/clear-2/second").from += Minutes(10); }, {"place-held-late"}},
        Break{"a place left early",
              [](Small& s) { place_of(s, "table/top/clear-2/second").until = at(0, 17, 30); },
              {"place-left-early", "set-aside-differs"}},
        Break{"no room to stand aside",
              [](Small& s) {
                stand_aside(s, "table/leg.1-2/clear-2", at(0, 15, 40));
                s.job.shop.set_aside = 0;
              },
              {"place-left-early"}},
        Break{"more aside than there is room for",
              [](Small& s) {
                stand_aside(s, "table/leg.1-2/clear-2", at(0, 15, 40));
                s.job.shop.set_aside = 1;
              },
              {"set-aside-over"}},
        Break{"a wrong hour aside",
              [](Small& s) {
                stand_aside(s, "table/leg.1-2/clear-2", at(0, 15, 40));
                place_of(s, "table/leg.1-2/clear-2").then->until = at(0, 20);
              },
              {"set-aside-differs"}},
        Break{"nothing said of what stands aside",
              [](Small& s) { place_of(s, "table/leg.1-2/clear-2").until = at(0, 15, 40); },
              {"set-aside-differs"}}),
    name_of);

INSTANTIATE_TEST_SUITE_P(
    Work, Broken,
    testing::Values(Break{"fixed work moved", [](Small& s) { s.move("shop/mill", at(2, 9)); }, {"work-moved"}},
                    Break{"outside its window", [](Small& s) { s.shop_work("stocktaking").not_after = at(1, 13); }, {"outside-window"}},
                    Break{"before its window", [](Small& s) { s.shop_work("stocktaking").not_before = at(1, 12); }, {"outside-window"}},
                    Break{"work too short", [](Small& s) { s.shop_work("stocktaking").takes = Hours(2.5); }, {"too-short"}},
                    Break{"too few for the work", [](Small& s) { s.event("table/assembly").people = 1; }, {"too-few-people"}},
                    Break{"shop work missing", [](Small& s) { s.erase("shop/mill"); }, {"work-missing"}},
                    Break{"delivery missing", [](Small& s) { s.erase("table/delivery"); }, {"work-missing", "ready-differs"}},
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
                          {"delivery-not-last", "ready-differs"}},
                    Break{"record lost",
                          [](Small& s) {
                            say_done(s, "table/leg.1-2/sand");
                            s.event("table/leg.1-2/sand").done = false;
                          },
                          {"history-lost"}},
                    Break{"record altered",
                          [](Small& s) {
                            say_done(s, "table/leg.1-2/sand");
                            s.job.order.history[0].end = at(0, 9);
                          },
                          {"history-lost"}},
                    Break{"record made up", [](Small& s) { s.event("table/leg.1-2/sand").done = true; }, {"history-invented"}}),
    name_of);

INSTANTIATE_TEST_SUITE_P(
    Amounts, Broken,
    testing::Values(
        Break{"volume wrong",
              [](Small& s) {
                auto& litres = s.event("table/leg.1-2/clear-1").volume;
                litres = *litres * 1.02;
              },
              {"volume-differs"}},
        Break{"no volume", [](Small& s) { s.event("table/leg.1-2/clear-1").volume.reset(); }, {"volume-differs"}},
        Break{"a method that the shop has not", [](Small& s) { s.job.shop.methods = {"roller"}; }, {"method-unknown"}},
        Break{"past the pot life", [](Small& s) { s.product().pot_life = Hours(0.01); }, {"pot-life"}},
        Break{
            "told thicker than its step", [](Small& s) { s.event("table/leg.1-2/clear-1").wet_film = Micrometres(110); }, {"film-differs"}},
        Break{"told to dry faster than its film does",
              [](Small& s) { s.event("table/leg.1-2/clear-1").drying.expected = 0.9; },
              {"film-differs"}},
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
        Break{"less than a twentieth left",
              [](Small& s) {
                s.plan.purchase[0].buy[0].size = s.plan.purchase[0].need * 1.04;
                s.plan.purchase[0].left_over = s.plan.purchase[0].need * 0.04;
              },
              {"purchase-tight"}},
        Break{"a spare can for nothing",
              [](Small& s) {
                s.plan.purchase[0].buy.push_back({Litres(0.25), 1, {}});
                s.plan.purchase[0].spare = Litres(0.25);
                s.plan.purchase[0].left_over += Litres(0.25);
              },
              {"purchase-tight"}},
        Break{"nothing bought", [](Small& s) { s.plan.purchase.clear(); }, {"purchase-missing"}},
        Break{"left over wrong", [](Small& s) { s.plan.purchase[0].left_over = Litres(0.5); }, {"purchase-differs"}},
        Break{"more on hand than on the shelf",
              [](Small& s) {
                s.plan.purchase[0].on_hand = Litres(0.5);
                s.plan.purchase[0].left_over += Litres(0.5);
              },
              {"stock-differs"}},
        Break{"handled too soon", [](Small& s) { *s.plan.pieces[0].ready.expected.handle -= Minutes(10); }, {"ready-differs"}},
        Break{"packed too soon", [](Small& s) { *s.plan.pieces[0].ready.expected.wrap -= Minutes(10); }, {"ready-differs"}},
        Break{"delivered too soon", [](Small& s) { *s.plan.pieces[0].ready.expected.deliver -= Minutes(10); }, {"ready-differs"}},
        Break{"used too soon", [](Small& s) { *s.plan.pieces[0].ready.expected.careful_use -= Minutes(10); }, {"ready-differs"}},
        Break{
            "cured too soon by the slow clock", [](Small& s) { *s.plan.pieces[0].ready.slow.full_use -= Minutes(10); }, {"ready-differs"}},
        Break{"no date where there is one", [](Small& s) { s.plan.pieces[0].ready.expected.full_use.reset(); }, {"ready-differs"}},
        Break{"slack wrong", [](Small& s) { *s.plan.pieces[0].slack += Hours(1); }, {"ready-differs"}},
        Break{"another promise", [](Small& s) { *s.plan.pieces[0].due += std::chrono::hours(24); }, {"ready-differs"}}),
    name_of);

}  // namespace
}  // namespace coatday::checker::test
