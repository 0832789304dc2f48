#include "report/figures/timeline_section.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <memory>

#include "report/figures/strip_air.h"
#include "report/figures/strip_faces.h"

namespace coatday::report::page {
namespace {

struct Sign {
  const char* kind;
  const char* words;
  int y, height;
};

void draw_signs(Element section) {
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

Phrase dates(const Week& first, const Week& last) {
  return Phrase(date_text(first.monday) + " – " + date_text(last.monday + date::days(6)));
}

void draw_week(Element parent, const Chart& chart, const Week& week, std::size_t index) {
  Element figure = parent.add("div", {{"class", "strip"},
                                      {"data-from", fmt::format("{}", week.from.time_since_epoch().count())},
                                      {"data-until", fmt::format("{}", week.until.time_since_epoch().count())}});
  Strip strip(figure, week);
  const std::string title = fmt::format("week-{}", index), more = title + "-more";
  strip.drawing().set("aria-labelledby", title).set("aria-describedby", more);
  strip.drawing().add("title", {{"id", title}}, "The week " + date_text(week.monday) + " – " + date_text(week.monday + date::days(6)));
  strip.drawing().add("desc", {{"id", more}}, "Air of the shop, and what becomes of every face; in words under Day by day.");
  draw_air(strip, chart);
  draw_faces(strip, chart);
  strip.finish();
}

// Why days pass on which the shop is open and nothing is put on.
List waits_in(const job::Plan& plan, const Week& week, const Texts& texts) {
  List list;
  for (const job::Wait& wait : plan.waits) {
    const Instant day = texts.zone.to_instant(LocalTime(wait.day));
    if (day < week.from || day >= week.until) continue;
    const job::Event& next = plan.events.at(wait.step);
    std::string text = date_text(wait.day) + ": " + next.name + (next.load_name.empty() ? "" : " on " + next.load_name) + " waits until " +
                       texts.instant(next.start) + ": " + wait.reason;
    if (!wait.air_fits)
      text += "; that day's air does not fit " + product_name(plan, next.product) + (wait.air.empty() ? "" : ": " + wait.air);
    list.items.emplace_back(text);
  }
  return list;
}

Section week_section(const std::shared_ptr<const Chart>& chart, const Week& week, std::size_t index, const Texts& texts) {
  Section section;
  section.title = dates(week, week);
  section.kind = "frame";
  section.blocks.emplace_back(Figure{"", [chart, week, index](Element parent) { draw_week(parent, *chart, week, index); }});
  section.blocks.emplace_back(waits_in(chart->plan, week, texts));
  return section;
}

// Nothing is done in it, and nothing becomes possible: what is on cures.
bool quiet(const Chart& chart, const Week& week) {
  const auto here = [&week](const std::optional<Instant>& t) { return t && *t >= week.from && *t < week.until; };
  const auto busy = [&week](const job::Event& e) { return week.meets(e.start, e.end); };
  const auto marked = [&here](const job::PieceResult& p) {
    return here(p.ready.expected.handle) || here(p.ready.expected.wrap) || here(p.ready.expected.deliver) || here(p.ready.slow.deliver);
  };
  const auto changes = [&week](const Row& row) {
    return std::any_of(row.stretches.begin(), row.stretches.end(),
                       [&week](const Stretch& s) { return s.state != State::curing && week.meets(s.from, s.until); });
  };
  return std::none_of(chart.plan.events.begin(), chart.plan.events.end(), busy) &&
         std::none_of(chart.plan.pieces.begin(), chart.plan.pieces.end(), marked) &&
         std::none_of(chart.rows.begin(), chart.rows.end(), changes);
}

Section quiet_weeks(const job::Plan& plan, const Week& first, const Week& last, const Texts& texts) {
  std::vector<std::string> promises;
  for (const job::PieceResult& piece : plan.pieces) {
    if (piece.due && *piece.due >= first.from && *piece.due < last.until)
      promises.push_back(piece.name + " is promised for " + texts.instant(*piece.due));
  }
  Section section;
  section.title = dates(first, last);
  section.lead = "nothing to do: what is on cures" + (promises.empty() ? "" : "; " + listed(promises));
  section.kind = "frame";
  return section;
}

}  // namespace

std::optional<Section> timeline(const job::Plan& plan, const job::AirForecast& air, const Texts& texts) {
  const std::vector<Week> weeks = weeks_of(plan);
  if (weeks.empty()) return std::nullopt;
  Chart measured{plan, air, texts.units, rows_of(plan)};
  measure(measured, weeks);
  const auto chart = std::make_shared<const Chart>(std::move(measured));
  Section section{"timeline", "Timeline"};
  section.media = Media::page;
  section.blocks.emplace_back(Figure{"", draw_signs});
  for (std::size_t i = 0; i < weeks.size(); ++i) {
    const std::size_t first = i;
    while (i < weeks.size() && quiet(*chart, weeks[i])) ++i;
    if (i > first) section.blocks.emplace_back(quiet_weeks(plan, weeks[first], weeks[i - 1], texts));
    if (i < weeks.size()) section.blocks.emplace_back(week_section(chart, weeks[i], i + 1, texts));
  }
  return section;
}

}  // namespace coatday::report::page
