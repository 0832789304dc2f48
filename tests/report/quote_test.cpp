// Quotes against sums made here from the same plan.
#include "job/quote.h"

#include <gtest/gtest.h>

#include "tests/report/sample_plan.h"

namespace coatday::planner {
namespace {

job::Plan priced() {
  job::Plan plan = report::sample::table();
  plan.shop.currency = "USD";
  finish::Product& product = plan.products.begin()->second;
  product.cans = {{Litres(1), Money(40)}, {Litres(0.25), Money(12)}};
  job::Purchase row;
  row.product = plan.products.begin()->first;
  row.need = Litres(1.5);
  row.on_hand = Litres(0.5);
  row.buy = {{Litres(1), 1, Money(40)}};
  plan.purchase = {row};
  return plan;
}

TEST(Quote, HoursAreOfOnePerson) {
  job::Plan plan = priced();
  Hours sum{0};
  for (job::Event& event : plan.events) {
    event.may_pause = false;
    sum += Hours(event.end - event.start) * event.people;
  }
  EXPECT_NEAR(job::quote(plan, {}).hours.count(), sum.count(), 1e-9);
  plan.events[0].people += 1;
  EXPECT_NEAR((job::quote(plan, {}).hours - sum).count(), Hours(plan.events[0].end - plan.events[0].start).count(), 1e-9);
}

TEST(Quote, TheShopsOwnWorkIsNotCounted) {
  job::Plan plan = priced();
  const Hours before = job::quote(plan, {}).hours;
  job::Event own = plan.events[0];
  own.piece.reset();
  own.id = "shop/stocktaking";
  plan.events.push_back(own);
  EXPECT_EQ(job::quote(plan, {}).hours, before);
  plan.events.back().id = "cans/water-clear";  // brought in for the order
  EXPECT_GT(job::quote(plan, {}).hours, before);
}

TEST(Quote, WhatPausesIsWorkedOnWhileTheShopIsOpen) {
  job::Plan plan = priced();
  plan.events.resize(1);
  job::Event& event = plan.events[0];
  event.may_pause = true;
  event.people = 1;
  event.end = event.start + std::chrono::hours(26);
  plan.working = {{event.start, event.start + std::chrono::hours(4)},
                  {event.start + std::chrono::hours(24), event.start + std::chrono::hours(30)}};
  EXPECT_NEAR(job::quote(plan, {}).hours.count(), 6, 1e-9);
}

TEST(Quote, CansCountWholeAndTheShelfByTheLitre) {
  const job::Quote q = job::quote(priced(), {});
  ASSERT_EQ(q.materials.size(), 1U);
  EXPECT_EQ(q.materials[0].from_shelf, Litres(0.5));
  EXPECT_NEAR(q.materials[0].cost.value().value(), 40 + 0.5 * 12 / 0.25, 1e-9);
  EXPECT_EQ(q.unpriced, 0U);
}

TEST(Quote, RatesMakeMoneyThatAddsUp) {
  const job::Quote none = job::quote(priced(), {});
  EXPECT_FALSE(none.work || none.markup || none.price);
  const job::Quote q = job::quote(priced(), {Money(48.33), 0.15});
  EXPECT_NEAR(q.work->value(), 48.33 * q.hours.count(), 0.005);
  EXPECT_NEAR(q.markup->value(), 0.15 * q.materials_cost.value(), 0.005);
  EXPECT_NEAR(q.price->value(), q.work->value() + q.materials_cost.value() + q.markup->value(), 1e-9);
}

TEST(Quote, NoPriceWhereAFinishHasNone) {
  job::Plan plan = priced();
  plan.purchase[0].buy[0].price.reset();
  const job::Quote q = job::quote(plan, {Money(48), std::nullopt});
  EXPECT_EQ(q.unpriced, 1U);
  EXPECT_TRUE(q.work);
  EXPECT_FALSE(q.price);
}

TEST(Quote, ThePromiseIsTheLateSide) {
  job::Plan plan = priced();
  ASSERT_TRUE(plan.pieces[0].ready.slow.deliver);
  const Instant late = *plan.pieces[0].ready.slow.deliver;
  const job::Quote q = job::quote(plan, {});
  EXPECT_EQ(q.promise, late);
  EXPECT_EQ(q.expected, plan.pieces[0].ready.expected.deliver);
  const auto day = [&plan](Instant t) { return day_of(plan.shop.zone.to_local(t)); };
  EXPECT_EQ(q.days.hands_on + q.days.waiting + q.days.closed, (day(late) - day(*q.begins)).count() + 1);
  plan.pieces[0].ready.slow.deliver.reset();
  EXPECT_FALSE(job::quote(plan, {}).promise);
}

}  // namespace
}  // namespace coatday::planner
