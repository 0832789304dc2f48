#include "planner/advice/air.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

#include <fmt/core.h>

#include "climate/psychrometrics.h"
#include "planner/advice/air_keys.h"
#include "planner/advice/room.h"

namespace coatday::planner {

namespace {

using When = std::function<bool(Instant)>;

/// What a logger has read stays as it is.
bool logged(climate::Origin origin) { return origin >= climate::Origin::log_temperature; }

/// The shop's air, warmed at times to a temperature at least, and dried to a humidity at most. Its moisture stays in it, but a humidity that
/// the shop file states stays as stated, as it does where the temperature beside it is changed in the file.
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
    const climate::Origin origin = source_->origin(t);
    if (logged(origin) || !when_(t)) return air;
    if (air.temperature < floor_) {
      const bool stated = origin == climate::Origin::constant || origin == climate::Origin::timetable;
      air = {floor_, stated ? air.humidity : climate::relative_humidity(floor_, climate::humidity_ratio(air))};
    }
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

void condition(job::Job& job, Celsius floor, RelativeHumidity ceiling, const When& when) {
  job.air = [make = job.air, floor, ceiling, when](Instant from, Instant until) {
    return std::make_unique<Conditioned>(make(from, until), floor, ceiling, when);
  };
}

/// The warmest of the heated hours; none where no hour is heated.
std::optional<Celsius> warmest_heated(const job::Job& job) {
  std::optional<Celsius> warmest;
  if (!job.room) return warmest;
  for (const climate::HeatingRule& rule : job.room->heating.rules) {
    for (const climate::HeatedHours& hours : rule.heated) warmest = std::max(warmest.value_or(hours.set_point), hours.set_point);
  }
  return warmest;
}

bool is_heated(const climate::HeatingRule& rule, LocalTime t) {
  const auto clock = t - day_of(t);
  return std::any_of(rule.heated.begin(), rule.heated.end(),
                     [clock](const climate::HeatedHours& hours) { return hours.from <= clock && clock < hours.until; });
}

/// The coldest of the heated hours, or of all where none is heated, and of the others.
struct Coldest {
  Celsius heated{100}, otherwise{100};
};
Coldest coldest(const job::Job& job, const job::Plan& plan) {
  const bool nights = warmest_heated(job).has_value();
  Coldest result;
  for (const climate::AirRow& row : plan.air.rows()) {
    const LocalTime local = job.shop.zone.to_local(row.from);
    const climate::HeatingRule* rule = nights ? job.room->heating.on(day_of(local)) : nullptr;
    Celsius& least = !nights || (rule != nullptr && is_heated(*rule, local)) ? result.heated : result.otherwise;
    least = std::min(least, row.air.temperature);
  }
  return result;
}

/// As the key "night" counts: on the days that the timetable speaks of, outside their heated hours.
When outside_heated_hours(const job::Job& job) {
  return [heating = job.room->heating, zone = job.shop.zone](Instant t) {
    const LocalTime local = zone.to_local(t);
    const climate::HeatingRule* rule = heating.on(day_of(local));
    return rule != nullptr && !is_heated(*rule, local);
  };
}

Change warm_at_night(const job::Job& job, Celsius floor) {
  if (has_room(job)) return heated_at_night(job, floor);
  return change(
      [floor, when = outside_heated_hours(job)](job::Job& other, Instant&) { condition(other, floor, RelativeHumidity(1), when); },
      at_night_text(job, floor), at_night_keys(job, floor));
}

Change warm_throughout(const job::Job& job, Celsius floor) {
  if (has_room(job)) return heated_throughout(job, floor);
  return change([floor](job::Job& other, Instant&) { condition(other, floor, RelativeHumidity(1), always); }, throughout_text(job, floor),
                throughout_keys(job, floor));
}

double degrees(Celsius t, Units units) { return units == Units::us ? t.value() * 9 / 5 + 32 : t.value(); }
Celsius from_degrees(double value, Units units) { return Celsius(units == Units::us ? (value - 32) * 5 / 9 : value); }

/// Whole degrees in the shop's units: the text then names exactly what was planned. The last of them is at night as warm as by day.
std::set<Celsius> floors(Units units, const std::optional<Celsius>& by_day) {
  std::set<Celsius> result;
  const auto whole = units == Units::us ? std::array{50, 55, 60, 65, 68, 72} : std::array{10, 13, 16, 18, 20, 22};
  for (const int value : whole) result.insert(from_degrees(value, units));
  if (by_day) result.insert(from_degrees(std::floor(degrees(*by_day, units) + 1e-9), units));
  return result;
}

Change dried(const job::Job& job, RelativeHumidity ceiling) {
  return change([ceiling](job::Job& other, Instant&) { condition(other, Celsius(-100), ceiling, always); },
                fmt::format("keep the shop's air at {:.0f} % RH or drier, nights too", 100 * ceiling.value()), humidity_keys(job, ceiling));
}

}  // namespace

ChangeSizes warmth(const job::Job& job, const job::Plan& plan, Heated heated) {
  const Coldest least = coldest(job, plan);
  const std::optional<Celsius> warmest = warmest_heated(job);
  ChangeSizes sizes;
  for (const Celsius floor : floors(job.shop.units, warmest)) {
    const bool at_night = warmest && floor <= *warmest && floor > least.otherwise;
    if (at_night && heated != Heated::throughout) sizes.push_back(warm_at_night(job, floor));
    if (floor > least.heated && heated != Heated::at_night) sizes.push_back(warm_throughout(job, floor));
  }
  return sizes;
}

ChangeSizes dryness(const job::Job& job, const job::Plan& plan) {
  RelativeHumidity dampest;
  for (const climate::AirRow& row : plan.air.rows()) dampest = std::max(dampest, row.air.humidity);
  ChangeSizes sizes;
  for (const double percent : {80, 70, 60, 50, 40}) {
    const RelativeHumidity ceiling(percent / 100);
    if (ceiling >= dampest) continue;
    const std::optional<Change> dryer = has_moisture(job) ? dehumidifier_at(job, ceiling) : dried(job, ceiling);
    if (dryer) sizes.push_back(*dryer);
  }
  return sizes;
}

Change good_air() {
  return change(
      [](job::Job& job, Instant&) {
        job.air = [make = job.air](Instant from, Instant until) { return std::make_unique<GoodAir>(make(from, until)); };
      },
      "good air at all hours");
}

}  // namespace coatday::planner
