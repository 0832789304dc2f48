// Day sheets: pages that a printer takes.
#include "report/papers/sheet.h"

#include <gtest/gtest.h>

#include <sstream>

#include "report/document/render_pages.h"
#include "tests/report/sample_plan.h"

namespace coatday::report {
namespace {

std::vector<std::string> pages(const std::string& text) {
  std::vector<std::string> all;
  std::istringstream in(text);
  for (std::string page; std::getline(in, page, '\f');) all.push_back(page);
  return all;
}

std::string sheet_of(const job::Plan& plan, const std::string& order) {
  return render_pages(sheet(plan, order, texts_of(plan, Units::metric)), {Units::metric, true, 80});
}

bool holds(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

TEST(Sheet, EveryPageFitsThePaper) {
  job::Plan plan = sample::table();
  const job::Event one = plan.events.front();
  for (int i = 0; i < 40; ++i) plan.events.insert(plan.events.begin(), one);
  for (const job::Plan& p : {sample::table(), sample::hostile("\f\x1b[2J<b>\xe6\x9c\xa8"), plan}) {
    const std::vector<std::string> all = pages(sheet_of(p, "Library table, \f walnut"));
    ASSERT_FALSE(all.empty());
    for (std::size_t i = 0; i < all.size(); ++i) {
      std::istringstream lines(all[i]);
      int count = 0;
      for (std::string line; std::getline(lines, line); ++count) EXPECT_LE(Text(line).width(), 80) << line;
      EXPECT_LE(count, 60) << all[i];
      EXPECT_FALSE(holds(all[i], "\x1b"));
      EXPECT_TRUE(holds(all[i], "day sheet " + std::to_string(i + 1) + " of " + std::to_string(all.size()))) << all[i];
    }
  }
}

TEST(Sheet, APageADayWithWork) {
  const job::Plan plan = sample::table();
  std::vector<std::string> dates;
  for (const job::Event& event : plan.events) {
    const std::string date = long_date(day_of(plan.shop.zone.to_local(event.start)));
    if (dates.empty() || dates.back() != date) dates.push_back(date);
  }
  const std::vector<std::string> all = pages(sheet_of(plan, "table"));
  ASSERT_EQ(all.size(), dates.size());
  for (std::size_t i = 0; i < all.size(); ++i) EXPECT_TRUE(holds(all[i], dates[i])) << all[i];
}

TEST(Sheet, EveryStepHasItsBoxAndWhatIsDoneIsTicked) {
  job::Plan plan = sample::table();
  plan.events[1].done = true;
  const std::string text = sheet_of(plan, "table");
  std::size_t open = 0, ticked = 0;
  for (std::size_t at = 0; (at = text.find("\n[ ]  ", at)) != std::string::npos; ++at) ++open;
  for (std::size_t at = 0; (at = text.find("\n[x]  ", at)) != std::string::npos; ++at) ++ticked;
  EXPECT_EQ(open, plan.events.size() - 1);
  EXPECT_EQ(ticked, 1U);
}

TEST(Sheet, TwoPartsAreMixedByVolume) {
  job::Plan plan = sample::table();
  job::Event* coat = nullptr;
  for (job::Event& event : plan.events) {
    if (event.volume && !event.product.empty()) coat = &event;
  }
  ASSERT_NE(coat, nullptr);
  coat->volume = Litres(0.12);
  coat->mixes = 2;
  finish::Product& product = plan.products.at(coat->product);
  product.two_part = finish::TwoPart{4, 1, Hours(0)};
  product.pot_life = Hours(2);
  EXPECT_TRUE(holds(sheet_of(plan, "table"), "mix 4 : 1 by volume, 96 ml and 24 ml, in 2 mixes")) << sheet_of(plan, "table");
}

TEST(Sheet, NothingPlannedIsNoPage) { EXPECT_EQ(sheet_of(sample::impossible(), "table"), ""); }

}  // namespace
}  // namespace coatday::report
