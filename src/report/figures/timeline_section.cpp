// The timeline: a legend, and week after week the air and the faces.
#include <fmt/core.h>

#include <algorithm>
#include <array>

#include "job/air_forecast.h"
#include "report/figures/strip.h"
#include "report/page/waits.h"
#include "report/sections/sections_html.h"
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

job::Range join(std::optional<job::Range> range, double value) {
  return {std::min(range.value_or(job::Range{value, value}).low, value), std::max(range.value_or(job::Range{value, value}).high, value)};
}

void measure(Chart& chart, const std::vector<Week>& weeks) {
  std::optional<job::Range> warmth, damp;
  for (const climate::AirRow& row : chart.plan.air.rows()) {
    if (row.from < weeks.front().from || row.from >= weeks.back().until) continue;
    warmth = join(warmth, row.air.temperature.value());
    damp = join(damp, row.air.humidity.value());
  }
  chart.temperature = warmth.value_or(job::Range{});
  chart.humidity = damp.value_or(job::Range{});
}

std::string week_words(const Week& week) { return date_text(week.monday) + " – " + date_text(week.monday + date::days(6)); }

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
  for (const std::string& words : waits) list.add("li", {}, words);
}

// Nothing is done in it, and nothing becomes possible: what is on cures.
bool quiet(const Chart& chart, const Week& week) {
  const auto here = [&week](const std::optional<Instant>& t) { return t && *t >= week.from && *t < week.until; };
  const auto busy = [&week](const job::Event& e) { return week.meets(e.start, e.end); };
  const auto marked = [&here](const job::PieceResult& p) {
    return here(p.ready.handle) || here(p.ready.pack) || here(p.ready.deliver) || here(p.ready_late.deliver);
  };
  const auto changes = [&week](const Row& row) {
    return std::any_of(row.stretches.begin(), row.stretches.end(),
                       [&week](const Stretch& s) { return s.state != State::curing && week.meets(s.from, s.until); });
  };
  return std::none_of(chart.plan.events.begin(), chart.plan.events.end(), busy) &&
         std::none_of(chart.plan.pieces.begin(), chart.plan.pieces.end(), marked) &&
         std::none_of(chart.rows.begin(), chart.rows.end(), changes);
}

void add_quiet_weeks(Element section, const job::Plan& plan, const Week& first, const Week& last) {
  section.add("h3", {}, date_text(first.monday) + " – " + date_text(last.monday + date::days(6)));
  std::vector<std::string> promises;
  for (const job::PieceResult& piece : plan.pieces) {
    if (piece.due && *piece.due >= first.from && *piece.due < last.until)
      promises.push_back(piece.name + " is promised for " + instant_text(*piece.due, plan.shop.zone));
  }
  section.add("p", {}, "nothing to do: what is on cures" + (promises.empty() ? "" : "; " + listed(promises))).set("class", "how");
}

}  // namespace

void add_timeline(Contents& contents, const job::Job& job, const job::Plan& plan, const job::AirForecast& air, Units units) {
  const std::vector<Week> weeks = weeks_of(plan);
  if (weeks.empty()) return;
  Chart chart{plan, air, units, rows_of(plan)};
  measure(chart, weeks);
  Element section = contents.section("timeline", "Timeline");
  add_legend(section);
  for (std::size_t i = 0; i < weeks.size(); ++i) {
    const std::size_t first = i;
    while (i < weeks.size() && quiet(chart, weeks[i])) ++i;
    if (i > first) add_quiet_weeks(section, plan, weeks[first], weeks[i - 1]);
    if (i < weeks.size()) add_week(section, chart, weeks[i], i + 1);
  }
}

}  // namespace coatday::report::page
