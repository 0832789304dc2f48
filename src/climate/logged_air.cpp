#include "climate/logged_air.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "climate/psychrometrics.h"

namespace coatday::climate {
namespace {

Track temperatures(const Log& log) {
  std::vector<Track::Point> points;
  for (const Reading& r : log.readings) points.push_back({r.time, r.temperature.value()});
  return Track(std::move(points));
}

Track humidities(const Log& log) {
  std::vector<Track::Point> points;
  for (const Reading& r : log.readings)
    if (r.humidity) points.push_back({r.time, r.humidity->value()});
  return Track(std::move(points));
}

/// What is left, at a moment, of a step at each end of a gap.
struct Shares {
  double before = 0, after = 0;
};

/// The solution of y'' = y / fading² that is 1 at one end and 0 at the other: exponential in a long gap, straight in a short one.
Shares shares(Instant t, const Track::Neighbours& around) {
  const auto faded = [](std::chrono::seconds span) { return std::exp(-(Hours(span) / LoggedAir::fading)); };
  Shares result;
  const bool left = around.before != nullptr && t - around.before->time <= LoggedAir::reach;
  const bool right = around.after != nullptr && around.after->time - t <= LoggedAir::reach;
  if (left && right) {
    const auto gap = around.after->time - around.before->time;
    const double whole = 1 - faded(2 * gap);
    result.before = faded(t - around.before->time) * (1 - faded(2 * (around.after->time - t))) / whole;
    result.after = faded(around.after->time - t) * (1 - faded(2 * (t - around.before->time))) / whole;
  } else if (left) {
    result.before = faded(t - around.before->time);
  } else if (right) {
    result.after = faded(around.after->time - t);
  }
  return result;
}

constexpr double hardly_any = 0.05;  // of a step: from there on the next source stands alone

}  // namespace

Track::Neighbours Track::around(Instant t) const {
  const auto after = std::upper_bound(points_.begin(), points_.end(), t, [](Instant value, const Point& p) { return value < p.time; });
  return {after == points_.begin() ? nullptr : &*(after - 1), after == points_.end() ? nullptr : &*after};
}

std::optional<double> Track::at(Instant t) const {
  const auto [before, after] = around(t);
  if (before == nullptr) return std::nullopt;
  if (before->time == t) return before->value;
  if (after == nullptr || after->time - before->time > longest_log_bridge) return std::nullopt;
  const double share = Hours(t - before->time) / Hours(after->time - before->time);
  return before->value + (after->value - before->value) * share;
}

LoggedAir::LoggedAir(std::shared_ptr<const Log> log, std::unique_ptr<AirSource> next)
    : log_(std::move(log)), next_(std::move(next)), temperature_(temperatures(*log_)), humidity_(humidities(*log_)) {}

Air LoggedAir::at(Instant t) const {
  Air air;
  if (const auto logged = temperature_.at(t)) {
    air.temperature = Celsius(*logged);
    if (const auto humidity = humidity_.at(t)) return {air.temperature, RelativeHumidity(*humidity)};
  } else {
    const Track::Neighbours around = temperature_.around(t);
    const Shares share = shares(t, around);
    air.temperature = next_->at(t).temperature;
    if (share.before > 0)
      air.temperature = air.temperature + (Celsius(around.before->value) - next_->at(around.before->time).temperature) * share.before;
    if (share.after > 0)
      air.temperature = air.temperature + (Celsius(around.after->value) - next_->at(around.after->time).temperature) * share.after;
  }
  const Track::Neighbours around = humidity_.around(t);
  const Shares share = shares(t, around);
  double vapour = vapour_pressure(next_->at(t)).value();
  const auto step = [this](const Track::Point& p) {  // a reading of humidity always has a temperature
    const Air logged{Celsius(*temperature_.at(p.time)), RelativeHumidity(p.value)};
    return vapour_pressure(logged) / vapour_pressure(next_->at(p.time));
  };
  if (share.before > 0) vapour *= std::pow(step(*around.before), share.before);
  if (share.after > 0) vapour *= std::pow(step(*around.after), share.after);
  air.humidity = RelativeHumidity(std::min(vapour / saturation_pressure(air.temperature).value(), 1.0));
  return air;
}

Air LoggedAir::mean(Instant from, Instant until) const {
  std::vector<Instant> cuts{from};
  const auto& points = temperature_.points();
  auto point = std::upper_bound(points.begin(), points.end(), from, [](Instant value, const Track::Point& p) { return value < p.time; });
  for (; point != points.end() && point->time < until; ++point) cuts.push_back(point->time);
  cuts.push_back(until);
  const double whole = Hours(until - from).count();
  Kelvins temperature;  // above 0 °C
  RelativeHumidity humidity;
  for (std::size_t i = 1; i < cuts.size(); ++i) {
    const double share = Hours(cuts[i] - cuts[i - 1]).count() / whole;
    const Air air = at(cuts[i - 1] + (cuts[i] - cuts[i - 1]) / 2);
    temperature += (air.temperature - Celsius(0)) * share;
    humidity += air.humidity * share;
  }
  return {Celsius(0) + temperature, humidity};
}

Origin LoggedAir::origin(Instant t) const {
  const auto [before, after] = temperature_.around(t);
  if (temperature_.at(t)) {
    if (!humidity_.at(t)) return Origin::log_temperature;
    const bool far = after != nullptr && before->time != t && after->time - before->time > bridged_step(*log_);
    return far ? Origin::log_bridged : Origin::log;
  }
  const Shares share = shares(t, {before, after});
  return share.before + share.after > hardly_any ? Origin::blend : next_->origin(t);
}

std::optional<RoomWork> LoggedAir::work(Instant from, Instant until) const {
  if (temperature_.at(from + (until - from) / 2)) return std::nullopt;
  return next_->work(from, until);
}

std::string LoggedAir::describe(Units units) const {
  return "readings of " + log_->name + (log_->days.empty() ? "" : ", " + log_->days) + "; beyond them " + next_->describe(units);
}

}  // namespace coatday::climate
