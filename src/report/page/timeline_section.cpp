// The timeline: a legend, and week after week the air and the faces.
#include <fmt/core.h>

#include <algorithm>
#include <array>

#include "plan/air_days.h"
#include "report/page/sections.h"
#include "report/page/strip.h"
#include "report/words.h"

namespace coatday::report::page {
namespace {

struct Sign {
  const char* kind;
  const char* words;
  int y, height;
};

void add_legend(Element section) {
  constexpr std::array signs{Sign{"on", "applied", 0, 12},
                             Sign{"wet", "wet: no dust", 0, 12},
                             Sign{"dry", "dries: not yet", 0, 12},
                             Sign{"open", "open: the next coat may go on", 1, 10},
                             Sign{"shut", "closed: scuff first", 0, 12},
                             Sign{"cure", "cures", 4, 4},
                             Sign{"work", "dry work", 3, 6},
                             Sign{"may", "air fits, somebody is at work", 3, 6},
                             Sign{"night", "night", 0, 12},
                             Sign{"off", "closed day", 0, 12}};
  Element list = section.add("ul", {{"class", "legend"}});
  for (const Sign& sign : signs) {
    Element item = list.add("li", {});
    Element svg = item.add("svg", {{"width", "26"}, {"height", "12"}, {"aria-hidden", "true"}});
    svg.add("rect", {{"class", sign.kind}, {"x", "1"}, {"y", number(sign.y)}, {"width", "24"}, {"height", number(sign.height)}});
    item.text(sign.words);
  }
}

plan::Range join(std::optional<plan::Range> range, double value) {
  return {std::min(range.value_or(plan::Range{value, value}).low, value), std::max(range.value_or(plan::Range{value, value}).high, value)};
}

void measure(Chart& chart, const std::vector<Week>& weeks) {
  std::optional<plan::Range> warmth, damp;
  for (const climate::AirRow& row : chart.plan.air.rows()) {
    if (row.from < weeks.front().from || row.from >= weeks.back().until) continue;
    warmth = join(warmth, row.air.temperature.value());
    damp = join(damp, row.air.humidity.value());
  }
  chart.temperature = warmth.value_or(plan::Range{});
  chart.humidity = damp.value_or(plan::Range{});
}

std::string week_words(const Week& week) { return date_words(week.monday) + " – " + date_words(week.monday + date::days(6)); }

// Why nothing is put on though the shop is open: what the next coat waits for.
std::vector<std::string> waits_in(const plan::Plan& plan, const Week& week) {
  std::vector<std::string> waits;
  const plan::Event* told = nullptr;
  for (const shop::WorkingTime& shift : shop::working_time(plan.shop, std::max(week.from, plan.from), week.until)) {
    const LocalDay day = local_day(shift.begin, plan.shop.zone);
    const auto on_day = [&](const plan::Event& e) { return plan::is_coat(e.kind) && local_day(e.start, plan.shop.zone) == day; };
    if (std::any_of(plan.events.begin(), plan.events.end(), on_day)) continue;
    const auto next = std::find_if(plan.events.begin(), plan.events.end(),
                                   [&](const plan::Event& e) { return plan::is_coat(e.kind) && e.start > shift.begin; });
    if (next == plan.events.end() || &*next == told || next->why.empty()) continue;
    told = &*next;
    waits.push_back(date_words(day) + ": " + next->name + (next->whose.empty() ? "" : " on " + next->whose) + " waits until " +
                    instant_words(next->start, plan.shop.zone) + ": " + next->why);
  }
  return waits;
}

void add_week(Element section, const Chart& chart, const Week& week, std::size_t index) {
  Element frame = section.add("div", {{"class", "frame"}});
  frame.add("h3", {}, week_words(week));
  Element figure = frame.add("div", {{"class", "strip"},
                                     {"data-from", fmt::format("{}", week.from.time_since_epoch().count())},
                                     {"data-until", fmt::format("{}", week.until.time_since_epoch().count())}});
  Strip strip(figure, week);
  const std::string title = fmt::format("week-{}", index), more = title + "-more";
  strip.drawing().set("aria-labelledby", title).set("aria-describedby", more);
  strip.drawing().add("title", {{"id", title}}, "The week " + week_words(week));
  strip.drawing().add("desc", {{"id", more}}, "Air of the shop, and what becomes of every face; in words under Day by day.");
  draw_air(strip, chart);
  draw_faces(strip, chart);
  strip.finish();
  const std::vector<std::string> waits = waits_in(chart.plan, week);
  if (waits.empty()) return;
  Element list = frame.add("ul", {{"class", "waits"}});
  for (const std::string& words : waits) add_text(list, "li", words);
}

plan::AirForecast forecast_over(const plan::Job& job, const plan::Plan& plan, const std::vector<Week>& weeks) {
  const Instant until = std::min(weeks.back().until, plan.until);
  const int days =
      static_cast<int>((local_day(until - std::chrono::seconds(1), plan.shop.zone) - local_day(plan.from, plan.shop.zone)).count()) + 1;
  return plan::forecast(job, job.catalogue, plan::products_in_use(job), plan.from, std::max(1, days));
}

}  // namespace

void add_timeline(Contents& contents, const plan::Job& job, const plan::Plan& plan, Units units) {
  const std::vector<Week> weeks = weeks_of(plan);
  if (weeks.empty()) return;
  const plan::AirForecast air = forecast_over(job, plan, weeks);
  Chart chart{plan, air, units, rows_of(plan)};
  measure(chart, weeks);
  Element section = contents.section("timeline", "Timeline");
  add_legend(section);
  for (std::size_t i = 0; i < weeks.size(); ++i) add_week(section, chart, weeks[i], i + 1);
}

}  // namespace coatday::report::page
