#include "report/figures/strip_air.h"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "report/document/lines.h"
#include "report/words.h"

namespace coatday::report::page {
namespace {

constexpr int curve_height = 40;

std::string hour_words(Minutes since_midnight) {
  const int hour = static_cast<int>(since_midnight.count() / 60), minute = static_cast<int>(since_midnight.count() % 60);
  return minute == 0 ? fmt::format("{}", hour) : fmt::format("{}:{:02}", hour, minute);
}

// "8-17", from opening to closing.
std::string opening_words(const job::Plan& plan, LocalDay day) {
  const Zone& zone = plan.shop.zone;
  const auto shifts = shop::working_time(plan.shop, zone.to_instant(LocalTime(day)), zone.to_instant(LocalTime(day + date::days(1))));
  if (shifts.empty()) return "closed";
  const auto clock = [&](Instant t) { return hour_words(std::chrono::floor<Minutes>(zone.to_local(t) - LocalTime(day))); };
  return clock(shifts.front().begin) + "–" + clock(shifts.back().end);
}

void draw_days(Strip& strip, const job::Plan& plan) {
  constexpr int room = 6;  // signs, in a day on a phone
  Element svg = strip.drawing();
  for (int i = 0; i < 7; ++i) {
    const LocalDay day = strip.week().monday + date::days(i);
    const double x = strip.week().share(plan.shop.zone.to_instant(LocalTime(day)));
    svg.add("line", {{"class", "midnight"}, {"x1", percent(x)}, {"x2", percent(x)}, {"y2", "100%"}});
    const std::string date = short_date(day);  // "Mon 18 Jan"
    svg.add("text", {{"class", "day"}, {"x", percent(x)}, {"dx", "4"}, {"y", "13"}}, date.substr(0, date.rfind(' ')));
    const std::string hours = opening_words(plan, day);
    svg.add("text", {{"class", Text(hours).width() > room ? "hours wide" : "hours"}, {"x", percent(x)}, {"dx", "4"}, {"y", "27"}}, hours);
  }
}

void draw_closed(Strip& strip, const job::Plan& plan) {
  for (const Closed& closed : closed_in(plan, strip.week())) {
    if (closed.whole_day) {
      strip.bar_at(strip.behind(), "off", closed.from, closed.until, 0, 0)->set("height", "100%");
    } else {
      strip.bar_at(strip.behind(), "night", closed.from, closed.until, 0, 0)->set("height", "100%");
    }
  }
}

double degrees(double celsius, Units units) { return units == Units::us ? celsius * 1.8 + 32 : celsius; }

/// A curve with its axis: values as they are shown, between two round ones.
struct Curve {
  const char* kind;
  std::string name, unit;
  double low, high;
  double (*value)(const climate::AirRow&, Units);
};

std::string path_of(const Curve& curve, const Chart& chart, const Week& week) {
  const double minute = static_cast<double>((week.until - week.from).count()) / 60;
  std::string path;
  for (const climate::AirRow& row : chart.plan.air.rows()) {
    if (!week.meets(row.from, row.from + climate::AirSeries::step)) continue;
    const double value = (curve.value(row, chart.units) - curve.low) / (curve.high - curve.low);
    path += fmt::format("{}{:.0f} {}", path.empty() ? "M" : "L", std::max(0.0, week.share(row.from)) * minute,
                        number(curve_height * (1 - std::clamp(value, 0.0, 1.0))));
  }
  return path;
}

void draw_curve(Strip& strip, const Chart& chart, const Curve& curve) {
  const std::string path = path_of(curve, chart, strip.week());
  if (path.empty()) return;
  Element row = strip.row(curve.name, curve.unit, curve_height);
  const double minutes = static_cast<double>((strip.week().until - strip.week().from).count()) / 60;
  for (const double share : {0.0, 1.0}) {
    const std::string y = number(Strip::line + curve_height * (1 - share));
    row.add("line", {{"class", "rule"}, {"x2", "100%"}, {"y1", y}, {"y2", y}});
  }
  Element frame = row.add("svg", {{"y", number(Strip::line)},
                                  {"width", "100%"},
                                  {"height", number(curve_height)},
                                  {"viewBox", fmt::format("0 0 {} {}", number(minutes), curve_height)},
                                  {"preserveAspectRatio", "none"}});
  frame.add("path", {{"class", curve.kind}, {"d", path}});
  row.add("text", {{"class", "tick"}, {"x", "3"}, {"y", number(Strip::line + 10)}}, number(curve.high));
  row.add("text", {{"class", "tick"}, {"x", "3"}, {"y", number(Strip::line + curve_height - 3)}}, number(curve.low));
}

/// Between two round values, one step further where all is the same.
Curve with_axis(Curve curve, double step) {
  const bool flat = curve.low == curve.high;
  curve.low = std::floor(curve.low / step - (flat ? 0.5 : 0)) * step;
  curve.high = std::ceil(curve.high / step + (flat ? 0.5 : 0)) * step;
  return curve;
}

void draw_curves(Strip& strip, const Chart& chart) {
  const bool us = chart.units == Units::us;
  const auto shown = [&](double celsius) { return degrees(celsius, chart.units); };
  const Curve warmth{"warmth",
                     "temperature",
                     us ? "°F" : "°C",
                     shown(chart.temperature.low),
                     shown(chart.temperature.high),
                     [](const climate::AirRow& row, Units units) { return degrees(row.air.temperature.value(), units); }};
  const Curve damp{"damp", "humidity", "% RH", chart.humidity.low * 100, chart.humidity.high * 100, [](const climate::AirRow& row, Units) {
                     return row.air.humidity.value() * 100;
                   }};
  draw_curve(strip, chart, with_axis(warmth, us ? 10 : 5));
  draw_curve(strip, chart, with_axis(damp, 10));
}

/// A finish is of interest while a coat of it is still to come, and until the last one is on.
bool due_in(const job::Plan& plan, const std::string& product, const Week& week) {
  constexpr Hours soon{72};
  bool before = false, after = false, in = false;
  for (const job::Event& event : plan.events) {
    if (event.product != product) continue;
    before = before || event.start < week.from;
    after = after || event.start >= week.until;
    in = in || (event.start >= week.from && event.start < later(week.until, soon));
  }
  return in || (before && after);
}

// Where it may go on: bold while somebody is at work, faint at other hours.
void draw_fit(Strip& strip, const job::AirForecast& air, const job::FinishHours& hours, const std::string& name) {
  Element row = strip.thin_row(name);
  const auto rows = air.air.rows();
  for (std::size_t i = 0; i < hours.may.size() && i < rows.size();) {
    std::size_t end = i;
    while (end < hours.may.size() && end < rows.size() && hours.may[end] == hours.may[i] && air.working[end] == air.working[i]) ++end;
    const Instant until = rows[end - 1].from + climate::AirSeries::step;
    if (hours.may[i] && air.working[i]) strip.bar_at(row, "may", rows[i].from, until, Strip::line, Strip::thin);
    if (hours.may[i] && !air.working[i]) strip.bar_at(row, "may-at-night", rows[i].from, until, Strip::line + 2, 2);
    i = end;
  }
}

}  // namespace

void draw_air(Strip& strip, const Chart& chart) {
  draw_closed(strip, chart.plan);
  draw_days(strip, chart.plan);
  draw_curves(strip, chart);
  bool any = false;
  for (const job::FinishHours& hours : chart.air.finishes) {
    if (!due_in(chart.plan, hours.use.product, strip.week())) continue;
    if (!any) strip.heading("the air fits");
    any = true;
    draw_fit(strip, chart.air, hours, product_name(chart.plan, hours.use.product));
  }
  if (any) strip.gap();
}

}  // namespace coatday::report::page
