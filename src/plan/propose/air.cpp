// Heat and dry air.
#include <algorithm>

#include <fmt/core.h>

#include "climate/psychrometrics.h"
#include "plan/propose/levers.h"

namespace coatday::plan {

namespace {

using When = std::function<bool(Instant)>;

/// The shop's air, warmed at times with its moisture in it to a temperature at least, and dried to a humidity at most.
class Conditioned : public climate::AirSource {
 public:
  Conditioned(std::unique_ptr<climate::AirSource> source, Celsius floor, RelativeHumidity ceiling, When when)
      : source_(std::move(source)), floor_(floor), ceiling_(ceiling), when_(std::move(when)) {}

  [[nodiscard]] climate::Air at(Instant t) const override { return conditioned(source_->at(t), t); }
  [[nodiscard]] climate::Air mean(Instant from, Instant until) const override {
    return conditioned(source_->mean(from, until), from + (until - from) / 2);
  }
  [[nodiscard]] climate::Origin origin(Instant t) const override { return source_->origin(t); }
  [[nodiscard]] std::string describe(Units units) const override { return source_->describe(units); }

 private:
  [[nodiscard]] climate::Air conditioned(climate::Air air, Instant t) const {
    if (!when_(t)) return air;
    if (air.temperature < floor_) air = {floor_, climate::relative_humidity(floor_, climate::humidity_ratio(air))};
    air.humidity = std::min(air.humidity, ceiling_);
    return air;
  }

  std::unique_ptr<climate::AirSource> source_;
  Celsius floor_;
  RelativeHumidity ceiling_;
  When when_;
};

/// 23 °C or warmer, 30 to 50 % RH: dry air speeds most finishes, but below 30 % times are less sure and late sides later.
class GoodAir : public climate::AirSource {
 public:
  explicit GoodAir(std::unique_ptr<climate::AirSource> source) : source_(std::move(source)) {}

  [[nodiscard]] climate::Air at(Instant t) const override { return good(source_->at(t)); }
  [[nodiscard]] climate::Air mean(Instant from, Instant until) const override { return good(source_->mean(from, until)); }
  [[nodiscard]] climate::Origin origin(Instant t) const override { return source_->origin(t); }
  [[nodiscard]] std::string describe(Units units) const override { return source_->describe(units); }

 private:
  static climate::Air good(climate::Air air) {
    constexpr RelativeHumidity driest(0.3);
    const Celsius warm = std::max(air.temperature, finish::reference_air.temperature);
    const RelativeHumidity humidity = climate::relative_humidity(warm, climate::humidity_ratio(air));
    return {warm, std::clamp(humidity, driest, finish::reference_air.humidity)};
  }

  std::unique_ptr<climate::AirSource> source_;
};

bool always(Instant) { return true; }

void condition(Job& job, Celsius floor, RelativeHumidity ceiling, const When& when) {
  job.air = [make = job.air, floor, ceiling, when](Instant from, Instant until) {
    return std::make_unique<Conditioned>(make(from, until), floor, ceiling, when);
  };
}

/// From closing to opening, and on days when nobody works.
bool closed_for_the_night(const shop::Shop& shop, Instant t) {
  const LocalTime local = shop.zone.to_local(t);
  const LocalDay day = day_of(local);
  if (std::find(shop.closed.begin(), shop.closed.end(), day) != shop.closed.end()) return true;
  std::optional<Minutes> opens, closes;
  for (const shop::Shift& shift : shop.week) {
    if (shift.day != weekday(day)) continue;
    opens = std::min(opens.value_or(shift.from), shift.from);
    closes = std::max(closes.value_or(shift.until), shift.until);
  }
  return !opens || local - day < *opens || local - day >= *closes;
}

/// The coldest by night, and by day.
std::pair<Celsius, Celsius> coldest(const Job& job, const Plan& plan) {
  std::pair<Celsius, Celsius> result{Celsius(100), Celsius(100)};
  for (const climate::AirRow& row : plan.air.rows()) {
    Celsius& least = closed_for_the_night(job.shop, row.from) ? result.first : result.second;
    least = std::min(least, row.air.temperature);
  }
  return result;
}

Change warm_at_night(const Job& job, Celsius floor) {
  const auto at_night = [shop = job.shop](Instant t) { return closed_for_the_night(shop, t); };
  return change([floor, at_night](Job& other, Instant&) { condition(other, floor, RelativeHumidity(1), at_night); },
                fmt::format("heat at night, from closing to opening: {} or warmer", format_temperature(floor, job.shop.units)));
}

Change warm_throughout(const Job& job, Celsius floor) {
  return change([floor](Job& other, Instant&) { condition(other, floor, RelativeHumidity(1), always); },
                fmt::format("keep the shop at {} or warmer, nights too", format_temperature(floor, job.shop.units)));
}

Change dried(RelativeHumidity ceiling) {
  return change([ceiling](Job& other, Instant&) { condition(other, Celsius(-100), ceiling, always); },
                fmt::format("keep the shop's air at {:.0f} % RH or drier, nights too", 100 * ceiling.value()));
}

}  // namespace

Lever warmth(const Job& job, const Plan& plan, Heated heated) {
  const auto [night, day] = coldest(job, plan);
  Lever lever;
  for (const double degrees : {10, 13, 16, 18, 20, 22}) {
    const Celsius floor(degrees);
    if (floor > night && heated != Heated::throughout)
      lever.push_back(has_heater(job) ? heater_at_night(job, floor) : warm_at_night(job, floor));
    if (floor > day && heated != Heated::at_night)
      lever.push_back(has_heater(job) ? heater_throughout(job, floor) : warm_throughout(job, floor));
  }
  return lever;
}

Lever dryness(const Job& job, const Plan& plan) {
  RelativeHumidity dampest;
  for (const climate::AirRow& row : plan.air.rows()) dampest = std::max(dampest, row.air.humidity);
  Lever lever;
  for (const double percent : {80, 70, 60, 50, 40}) {
    const RelativeHumidity ceiling(percent / 100);
    if (ceiling >= dampest) continue;
    const std::optional<Change> dryer = has_moisture(job) ? dehumidifier_at(job, ceiling) : dried(ceiling);
    if (dryer) lever.push_back(*dryer);
  }
  return lever;
}

Change good_air() {
  return change(
      [](Job& job, Instant&) {
        job.air = [make = job.air](Instant from, Instant until) { return std::make_unique<GoodAir>(make(from, until)); };
      },
      "good air at all hours");
}

}  // namespace coatday::plan
