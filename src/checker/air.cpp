// The air while a coat goes on and after, and what must not happen beside a wet one.

#include <algorithm>

#include <fmt/core.h>

#include "checker/checks.h"

namespace coatday::checker {

namespace {

using finish::Stage;

std::optional<std::string> refusal(const finish::Limits& limits, const climate::AirRow& row) {
  const Kelvins margin = row.air.temperature - row.dew_point;
  const double t = row.air.temperature.value();
  if (row.air.temperature < limits.coldest) return fmt::format("{:.1f} °C is colder than {:.1f} °C", t, limits.coldest.value());
  if (row.air.temperature > limits.hottest) return fmt::format("{:.1f} °C is hotter than {:.1f} °C", t, limits.hottest.value());
  if (row.air.humidity > limits.dampest) {
    return fmt::format("{:.0f} % RH is damper than {:.0f} %", 100 * row.air.humidity.value(), 100 * limits.dampest.value());
  }
  if (margin < limits.dew_point_margin) return fmt::format("{:.1f} K above the dew point is too near", margin.value());
  if (limits.blush_margin && margin < *limits.blush_margin)
    return fmt::format("{:.1f} K above the dew point makes it blush", margin.value());
  return std::nullopt;
}

/// Limits a hair wider, and none on the humidity: that is the room's.
finish::Limits at_surface(finish::Limits limits) {
  limits.coldest = limits.coldest - surface_slack;
  limits.hottest = limits.hottest + surface_slack;
  limits.dampest = RelativeHumidity(1);
  limits.dew_point_margin -= surface_slack;
  if (limits.blush_margin) *limits.blush_margin -= surface_slack;
  limits.hold_above = limits.hold_above - surface_slack;
  return limits;
}

/// The rows that a span touches.
std::span<const climate::AirRow> touched(const climate::AirSeries& air, Instant from, Instant until) {
  const auto rows = air.rows();
  const auto over = [&](const climate::AirRow& row) { return row.from + climate::AirSeries::step <= from; };
  const auto first = std::partition_point(rows.begin(), rows.end(), over);
  return {first, std::partition_point(first, rows.end(), [&](const climate::AirRow& row) { return row.from < until; })};
}

/// Whether a coat keeps the limits in one series of air: the room's, or that at a surface.
class AirJudge {
 public:
  AirJudge(const PlanFacts& facts, std::size_t coat, Breaches& out) : facts_(facts), i_(coat), e_(facts.event(coat)), out_(out) {}

  void judge(const std::string& where, const climate::AirSeries& air, const finish::Limits& limits) {
    const Instant wet_from = e_.start + e_.set_up;
    const Instant wet_until = std::max(e_.end - e_.clean_up, wet_from);
    const Instant hold_until = later(e_.end, limits.hold);
    for (const climate::AirRow& row : touched(air, std::min(wet_from, e_.end), std::max(wet_until, hold_until))) {
      const Instant row_end = row.from + climate::AirSeries::step;
      if (row_end > wet_from && row.from < wet_until) {
        if (const auto words = refusal(limits, row)) return report("air-outside-limits", where, row, *words);
      }
      if (row_end > e_.end && row.from < hold_until && limits.hold > Hours(0) && row.air.temperature < limits.hold_above) {
        return report("too-cold-after", where, row,
                      fmt::format("{:.1f} °C is colder than {:.1f} °C", row.air.temperature.value(), limits.hold_above.value()));
      }
    }
  }

  void judge_can() {
    const Hours own = own_time_constant(*facts_.events[i_].product);
    if (own <= Hours(0)) return;
    const Celsius coldest = at_surface(facts_.events[i_].product->limits).coldest;
    for (const climate::AirRow& row : touched(facts_.surface_air.at(own), e_.start + e_.set_up, e_.end - e_.clean_up)) {
      if (row.air.temperature >= coldest) continue;
      return report("can-too-cold", "in the can ", row, fmt::format("{:.1f} °C is colder than its limit", row.air.temperature.value()));
    }
  }

 private:
  void report(std::string code, const std::string& where, const climate::AirRow& row, const std::string& words) {
    out_.push_back({std::move(code), fmt::format("{}: at {} {}{}", facts_.name(i_), facts_.when(row.from), where, words)});
  }

  const PlanFacts& facts_;
  std::size_t i_;
  const job::Event& e_;
  Breaches& out_;
};

void check_coat_air(const PlanFacts& facts, std::size_t i, Breaches& out) {
  const finish::Limits& limits = facts.events[i].product->limits;
  const job::Event& e = facts.event(i);
  if (e.start < facts.plan.air.begin() || e.end > facts.plan.air.end()) {
    out.push_back({"no-air", facts.name(i) + ": the plan does not know the air"});
    return;
  }
  AirJudge judge(facts, i, out);
  const std::size_t before = out.size();
  judge.judge("", facts.plan.air, limits);
  for (const Hours body : facts.events[i].bodies) {
    if (body > Hours(0) && out.size() == before) judge.judge("at the surface ", facts.surface_air.at(body), at_surface(limits));
  }
  judge.judge_can();
}

Hours settling(const shop::Shop& shop, shop::Dust dust) {
  switch (dust) {
    case shop::Dust::none:
      return Hours(0);
    case shop::Dust::light:
      return shop.light_dust_settles;
    case shop::Dust::heavy:
      return shop.heavy_dust_settles;
  }
  return Hours(0);
}

/// More than rounding of [start, end) lies inside [from, until).
bool overlap(Instant start, Instant end, Instant from, Instant until) { return start + rounding < until && from + rounding < end; }

}  // namespace

void check_limits(const PlanFacts& facts, Breaches& out) {
  for (std::size_t i = 0; i < facts.events.size(); ++i) {
    if (facts.coat(i) && !facts.event(i).done) check_coat_air(facts, i, out);
  }
}

void check_dust_and_heat(const PlanFacts& facts, Breaches& out) {
  const Hours clear = facts.job.shop.hot_work_clear;
  for (std::size_t c = 0; c < facts.events.size(); ++c) {
    if (!facts.coat(c)) continue;
    const job::Event& coat = facts.event(c);
    const Instant dry = facts.reached(c, {Stage::tack_free, Stage::handle, Stage::recoat});
    const Instant firm = facts.reached(c, {Stage::handle, Stage::recoat, Stage::tack_free});
    for (std::size_t i = 0; i < facts.events.size(); ++i) {
      const job::Event& e = facts.event(i);
      if (i == c || (coat.done && e.done)) continue;
      const EventFacts& what = facts.events[i];
      if (what.dust != shop::Dust::none && overlap(coat.start, dry, e.start, later(e.end, settling(facts.job.shop, what.dust)))) {
        out.push_back({"dust-on-wet", fmt::format("{}: its dust meets {}, wet until {}", facts.name(i), facts.name(c), facts.when(dry))});
      }
      if (what.hot && facts.events[c].product->flammable() && overlap(coat.start, later(firm, clear), e.start, later(e.end, clear))) {
        out.push_back({"hot-near-vapour", fmt::format("{}: sparks or flame beside {}, flammable until {}; {} must lie between",
                                                      facts.name(i), facts.name(c), facts.when(firm), format_span(clear))});
      }
    }
  }
}

}  // namespace coatday::checker
