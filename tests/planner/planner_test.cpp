// The planner on small jobs: every plan is judged by the checker, then looked at for what the case is about.

#include <gtest/gtest.h>

#include <algorithm>

#include "checker/check.h"
#include "job/stages.h"
#include "tests/planner/planned.h"

namespace coatday::planner {
namespace {

using tests::JobKnobs;
using tests::make_job;
using tests::monday;

const job::Event* find(const job::Plan& plan, const std::string& id) {
  const auto found = std::find_if(plan.events.begin(), plan.events.end(), [&](const job::Event& e) { return e.id == id; });
  return found == plan.events.end() ? nullptr : &*found;
}

long count_kind(const job::Plan& plan, job::EventKind kind) {
  return std::count_if(plan.events.begin(), plan.events.end(), [&](const job::Event& e) { return e.kind == kind; });
}

TEST(Planner, CoatsEveryFaceTwice) {
  const job::Plan plan = planned(make_job());
  ASSERT_EQ(plan.status, job::Status::planned);
  for (const job::FaceEntry& face : plan.faces) EXPECT_EQ(face.coats, 2) << face.id;
}

TEST(Planner, SecondFaceFollowsTheTurn) {
  const job::Plan plan = planned(make_job());
  const job::Event* first = find(plan, "table-1/top/clear 1/first");
  const job::Event* turn = find(plan, "table-1/top/clear 1/turn");
  const job::Event* second = find(plan, "table-1/top/clear 1/second");
  ASSERT_TRUE(first && turn && second);
  EXPECT_GE(turn->start, *first->stages.expected[finish::Stage::tack_free]);
  EXPECT_GE(second->start, turn->end);
  EXPECT_LE(second->start, first->end + std::chrono::hours(24));
}

TEST(Planner, TurnsJustBeforeTheNextCoat) {
  JobKnobs knobs;
  knobs.scuff_step = false;
  const job::Plan plan = planned(make_job(knobs));
  const job::Event* back = find(plan, "table-1/top/clear 2/turn-back");
  const job::Event* next = find(plan, "table-1/top/clear 2/first");
  ASSERT_TRUE(back && next);
  // Nothing else may start between the two, on one pair of hands, but a night or a break may lie there.
  for (const job::Event& event : plan.events) EXPECT_FALSE(event.start > back->start && event.start < next->start) << event.id;
}

TEST(Planner, SmallPartsShareAPlaceWithALargeOne) {
  JobKnobs knobs;
  knobs.points = 1;
  job::Job job = make_job(knobs);
  std::vector<piece::Part>& parts = job.order.pieces[0].piece.parts;
  piece::Part stop = parts[0];
  stop.id = stop.name = "stop";
  stop.shape = piece::Board{Metres(0.33), Metres(0.06), Metres(0.02)};
  parts.push_back(stop);
  const job::Plan plan = planned(job);
  ASSERT_EQ(plan.status, job::Status::planned);
  const job::Event* both = find(plan, "table-1/top+stop/clear 1/first");
  ASSERT_TRUE(both);
  EXPECT_EQ(both->faces.size(), 2U) << "top and stop lie side by side";
}

TEST(Planner, PiecesShareAPlace) {
  JobKnobs knobs;
  knobs.points = 1;
  knobs.pieces = 2;
  job::Job job = make_job(knobs);
  for (shop::DryingPlace& place : job.shop.places) place.length = Metres(4);
  const job::Plan side_by_side = planned(job);
  for (shop::DryingPlace& place : job.shop.places) place.length = Metres(2);
  const job::Plan one_after_the_other = planned(job);
  ASSERT_TRUE(side_by_side.ready && one_after_the_other.ready);
  EXPECT_LT(*side_by_side.ready, *one_after_the_other.ready);
}

TEST(Planner, LongNarrowPiecesShareAPlaceAcrossItsWidth) {
  JobKnobs knobs;
  knobs.points = 1;
  knobs.pieces = 2;
  job::Job job = make_job(knobs);
  for (job::OrderPiece& piece : job.order.pieces) piece.piece.parts[0].shape = piece::Board{Metres(1.8), Metres(0.3), Metres(0.02)};
  const job::Plan plan = planned(job);
  const auto shared = [&](const job::PlaceUse& a, const job::PlaceUse& b) {
    return a.place == "points" && a.place == b.place && a.across && plan.events[a.event].piece != plan.events[b.event].piece &&
           a.from < b.until && b.from < a.until;
  };
  EXPECT_TRUE(std::any_of(plan.places.begin(), plan.places.end(), [&](const job::PlaceUse& a) {
    return std::any_of(plan.places.begin(), plan.places.end(), [&](const job::PlaceUse& b) { return shared(a, b); });
  }));
}

TEST(Planner, HungPartsAreCoatedAllRoundAtOnce) {
  const job::Plan plan = planned(make_job());
  const job::Event* legs = find(plan, "table-1/leg.1-4/clear 1");
  ASSERT_TRUE(legs);
  EXPECT_EQ(legs->faces.size(), 6U);
}

TEST(Planner, AMissedWindowCallsForAScuff) {
  JobKnobs knobs;
  knobs.scuff_step = false;
  // Closed from Tuesday to Thursday: the second coat cannot follow within 24 h of a first coat on Monday afternoon.
  const LocalDay tuesday{date::local_days(date::year(2027) / 1 / 12)};
  knobs.closed = {tuesday, tuesday + date::days(1), tuesday + date::days(2)};
  knobs.air = {Celsius(16), RelativeHumidity(0.75)};  // recoat takes until the evening
  const job::Plan plan = planned(make_job(knobs));
  ASSERT_EQ(plan.status, job::Status::planned);
  EXPECT_GT(count_kind(plan, job::EventKind::scuff), 0);
}

TEST(Planner, NoScuffWhereTheWindowIsMet) {
  JobKnobs knobs;
  knobs.scuff_step = false;
  const job::Plan plan = planned(make_job(knobs));
  ASSERT_EQ(plan.status, job::Status::planned);
  EXPECT_EQ(count_kind(plan, job::EventKind::scuff), 0);
}

TEST(Planner, DoorsGoThroughTheRacksInEqualBatches) {
  JobKnobs knobs;
  knobs.doors = 10;
  knobs.racks = 4;
  const job::Plan plan = planned(make_job(knobs));
  ASSERT_EQ(plan.status, job::Status::planned);
  EXPECT_TRUE(find(plan, "table-1/door.1-4/clear 1/first"));
  EXPECT_TRUE(find(plan, "table-1/door.5-7/clear 1/first"));
  EXPECT_TRUE(find(plan, "table-1/door.8-10/clear 1/first"));
}

TEST(Planner, RefusesAColdShopWithAReason) {
  JobKnobs knobs;
  knobs.air = {Celsius(8), RelativeHumidity(0.5)};
  const job::Plan plan = planned(make_job(knobs));
  ASSERT_EQ(plan.status, job::Status::impossible);
  ASSERT_FALSE(plan.contradiction.empty());
  EXPECT_NE(plan.contradiction.front().find("the air never suits clear"), std::string::npos) << plan.contradiction.front();
}

TEST(Planner, SaysWhatContradictsWhat) {
  JobKnobs knobs;
  knobs.both_faces_within = Hours(0.05);  // the first face is not even tack-free by then
  const job::Plan plan = planned(make_job(knobs));
  ASSERT_EQ(plan.status, job::Status::impossible);
  const auto has = [&](const std::string& words) {
    return std::any_of(plan.contradiction.begin(), plan.contradiction.end(),
                       [&](const std::string& s) { return s.find(words) != std::string::npos; });
  };
  EXPECT_TRUE(has("both faces of"));
  EXPECT_TRUE(has("tack-free"));
  EXPECT_LE(plan.contradiction.size(), 5U);
}

// What is at its earliest is so after all that comes before it, the sanding that is no part of the contradiction too.
TEST(Planner, TellsTimesOfAContradictionAfterAllThatComesBefore) {
  JobKnobs knobs;
  knobs.both_faces_within = Hours(0.05);
  job::Job job = make_job(knobs);
  const std::string over_at = " is over no earlier than ";
  const auto sentence = [&] {
    for (const std::string& s : planned(job).contradiction) {
      if (const std::size_t at = s.find(over_at); at != std::string::npos) return s.substr(at + over_at.size(), 16);
    }
    return std::string("nothing");
  };
  const std::string soon = sentence();
  for (auto& [id, schedule] : job.catalogue.schedules) {
    for (finish::Step& step : schedule.steps) {
      if (!step.product) step.takes = Hours(3);
    }
  }
  EXPECT_NE(soon, "nothing");
  EXPECT_LT(soon, sentence()) << soon;
}

TEST(Planner, ACoatLongerThanAnyShiftIsTheWholeReason) {
  JobKnobs knobs;
  job::Job job = make_job(knobs);
  for (auto& [id, product] : job.catalogue.products) product.set_up = Hours(1);
  for (shop::Shift& shift : job.shop.week) shift.until = shift.from + Minutes(60);
  const job::Plan plan = planned(job);
  ASSERT_EQ(plan.status, job::Status::impossible);
  ASSERT_EQ(plan.contradiction.size(), 1U) << testing::PrintToString(plan.contradiction);
  EXPECT_NE(plan.contradiction.front().find("in one go, set-up and clean-up in it, and no shift is so long"), std::string::npos);
}

// The checker once looked no further than two months for the next day of work.
TEST(Planner, DeliversAfterASeasonOfClosedDays) {
  job::Job job = make_job();
  const job::Plan before = planned(job);
  ASSERT_TRUE(before.ready);
  const LocalDay last = day_of(job.shop.zone.to_local(before.events.back().end));
  for (int day = 1; day < 90; ++day) job.shop.closed.push_back(last + date::days(day));
  EXPECT_EQ(planned(job).status, job::Status::planned);
}

TEST(Planner, SaysWhoseTopItIs) {
  job::Job job = make_job();
  job.order.pieces.push_back(job.order.pieces.front());
  job.order.pieces.back().piece.id = "table-2";
  job.order.pieces.back().piece.name = "second table";
  const job::Plan plan = planned(job);
  ASSERT_EQ(plan.status, job::Status::planned);
  EXPECT_EQ(find(plan, "table-2/top/clear 1/first")->load, "top");
  EXPECT_EQ(find(plan, "table-2/top/clear 1/first")->load_name, "second table / top");
  EXPECT_EQ(find(planned(make_job()), "table-1/top/clear 1/first")->load_name, "top");
}

TEST(Planner, OneFaceAloneIsRefused) {
  job::Job job = make_job();
  job.order.pieces[0].piece.parts[0].exceptions = {{"underside", 0, "", {}}};
  const job::Plan plan = planned(job);
  EXPECT_EQ(plan.status, job::Status::impossible);
}

TEST(Planner, ADeclaredExceptionWarnsAllTheWay) {
  job::Job job = make_job();
  job.order.pieces[0].piece.parts[0].exceptions = {{"underside", 0, "screwed flat to a wall", {}}};
  const job::Plan plan = planned(job);
  ASSERT_EQ(plan.status, job::Status::planned);
  const auto warned =
      std::find_if(plan.findings.begin(), plan.findings.end(), [](const job::Finding& f) { return f.code == "uneven-faces"; });
  ASSERT_NE(warned, plan.findings.end());
  EXPECT_NE(warned->message.find("screwed flat to a wall"), std::string::npos);
}

TEST(Planner, MillingKeepsOffWetFilm) {
  job::Job job = make_job();
  shop::Work milling;
  milling.id = milling.name = "milling";
  milling.takes = Hours(2);
  milling.dust = shop::Dust::heavy;
  milling.start = monday() + std::chrono::hours(24);
  job.shop.work = {milling};
  job.shop.people = 2;
  const job::Plan plan = planned(job);
  ASSERT_EQ(plan.status, job::Status::planned);
  const job::Event* mill = find(plan, "shop/milling");
  ASSERT_TRUE(mill);
  for (const job::Event& event : plan.events) {
    if (event.product.empty()) continue;
    const bool apart = *event.stages.expected[finish::Stage::tack_free] <= mill->start || event.start >= mill->end + std::chrono::hours(12);
    EXPECT_TRUE(apart) << event.id;
  }
}

TEST(Planner, TwoSandWhereThatIsSoonerAndOneWhereTheOtherIsBusy) {
  JobKnobs knobs;
  knobs.people = 2;
  job::Job job = make_job(knobs);
  job.catalogue.schedules.at("two-coats").steps[0].work_rate = SquareMetresPerHour(1);
  const job::Plan together = planned(job);
  shop::Work milling;
  milling.id = milling.name = "milling";
  milling.takes = Hours(4);
  for (int shift = 0; shift < 40; ++shift) {
    milling.id = "milling-" + std::to_string(shift);
    milling.start = monday() + std::chrono::hours(24 * (shift / 2) + (shift % 2 == 0 ? 0 : 5));
    job.shop.work.push_back(milling);
  }
  const job::Plan alone = planned(job);
  job.shop.work.clear();
  job.shop.people = 1;
  const job::Plan one = planned(job);
  ASSERT_TRUE(together.ready && alone.ready && one.ready);
  EXPECT_LE(*together.ready, *one.ready);
  const auto by = [](const job::Plan& plan, int people) {
    return std::any_of(plan.events.begin(), plan.events.end(),
                       [&](const job::Event& e) { return e.kind == job::EventKind::prepare && e.people == people; });
  };
  EXPECT_TRUE(by(together, 2));
  EXPECT_FALSE(by(alone, 2));
  EXPECT_FALSE(by(one, 2));
}

TEST(Planner, APieceIsCuredWhenItsLowerCoatsAre) {
  job::Job job = make_job();
  finish::Product& slow = job.catalogue.products.emplace("slow", job.catalogue.products.at("clear")).first->second;
  slow.id = slow.name = "slow";
  slow.rows.front().hours[finish::Stage::full_cure] = Hours(1e6);
  for (finish::Step& step : job.catalogue.schedules.at("two-coats").steps) {
    if (step.product) {
      step.product = "slow";
      break;
    }
  }
  const job::Plan plan = planned(job);  // judged
  ASSERT_EQ(plan.status, job::Status::planned);
  EXPECT_FALSE(plan.pieces.front().ready.expected.full_use);
}

TEST(Planner, WeldingKeepsOffVapour) {
  job::Job job = make_job();
  job.catalogue.products.at("clear").flash = finish::FlashClass::category_3;
  shop::Work welding;
  welding.id = welding.name = "welding";
  welding.takes = Hours(1);
  welding.hot = true;
  job.shop.work = {welding};
  const job::Plan plan = planned(job);
  EXPECT_EQ(plan.status, job::Status::planned);
  const job::Event* weld = find(plan, "shop/welding");
  ASSERT_TRUE(weld);
  for (const job::Event& coat : plan.events) {
    if (coat.product != "clear") continue;
    const Instant firm = *coat.stages.expected[job::vapour_until(job.catalogue.products.at("clear"))];
    EXPECT_TRUE(weld->end + Minutes(30) <= coat.start || firm + Minutes(30) <= weld->start) << coat.id;
  }
}

TEST(Planner, WorkWhoseWindowIsOverTakesNoPart) {
  job::Job job = make_job();
  shop::Work brackets;
  brackets.id = brackets.name = "weld brackets";
  brackets.takes = Hours(1);
  brackets.not_before = monday() - std::chrono::hours(24 * 7);
  brackets.not_after = monday() - std::chrono::hours(24);
  job.shop.work = {brackets};
  const job::Plan plan = planned(job);
  EXPECT_EQ(plan.status, job::Status::planned);
  EXPECT_FALSE(find(plan, "shop/weld brackets"));
}

TEST(Planner, NeverPromisesBeforeTheBound) {
  for (const int pieces : {1, 2, 3}) {
    JobKnobs knobs;
    knobs.pieces = pieces;
    const job::Plan plan = planned(make_job(knobs));
    ASSERT_EQ(plan.status, job::Status::planned);
    ASSERT_TRUE(plan.ready && plan.ready_bound);
    EXPECT_LE(*plan.ready_bound, *plan.ready);
  }
}

TEST(Planner, EveryStartHasAReason) {
  const job::Plan plan = planned(make_job());
  for (const job::Event& event : plan.events) EXPECT_FALSE(event.why.empty()) << event.id;
}

TEST(Planner, OrderWorkStandsInItsPlace) {
  job::Job job = make_job();
  job::OrderWork glue;
  glue.work.id = glue.work.name = "glue up";
  glue.work.takes = Hours(1);
  glue.work.rest = Hours(24);
  job::OrderWork delivery;
  delivery.work.id = delivery.work.name = "delivery";
  delivery.work.takes = Hours(1);
  delivery.when = job::OrderWork::When::after_finishing;
  delivery.delivery = true;
  job.order.pieces[0].work = {glue, delivery};
  const job::Plan plan = planned(job);
  ASSERT_EQ(plan.status, job::Status::planned);
  const job::Event* glued = find(plan, "table-1/glue up");
  const job::Event* sand = find(plan, "table-1/top/sand");
  const job::Event* out = find(plan, "table-1/delivery");
  ASSERT_TRUE(glued && sand && out);
  EXPECT_GE(sand->start, glued->end + std::chrono::hours(24));
  EXPECT_GE(out->start, *plan.pieces[0].ready.expected.wrap);
}

}  // namespace
}  // namespace coatday::planner
