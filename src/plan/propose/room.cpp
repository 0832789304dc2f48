// What the shop's own heater and dehumidifier can do: the room is reckoned anew with other settings.
#include <algorithm>

#include <fmt/core.h>

#include "plan/propose/levers.h"

namespace coatday::plan {

namespace {

using climate::KnownRoom;
using climate::Timetable;

/// No rule counts for less than the first.
void hold_at_night(Timetable& timetable, Celsius floor) {
  const auto raised = [floor](std::optional<Celsius> set) { return std::max(set.value_or(floor), floor); };
  if (timetable.night) timetable.night = raised(timetable.night);
  for (climate::HeatingRule& rule : timetable.rules) rule.otherwise = raised(rule.otherwise);
  climate::HeatingRule other_days;
  other_days.otherwise = floor;
  timetable.rules.insert(timetable.rules.begin(), std::move(other_days));
}

void hold_throughout(Timetable& timetable, Celsius floor) {
  hold_at_night(timetable, floor);
  for (climate::HeatingRule& rule : timetable.rules) {
    for (climate::HeatedHours& hours : rule.heated) hours.set_point = std::max(hours.set_point, floor);
  }
}

using ChangeRoom = std::function<void(KnownRoom&)>;

std::function<void(Job&, Instant&)> in_room(ChangeRoom change_room) {
  return [change_room = std::move(change_room)](Job& job, Instant&) {
    KnownRoom room = *job.room;
    change_room(room);
    job.air = job.air_in(room);
    job.room = std::make_shared<const KnownRoom>(std::move(room));
  };
}

bool until_ready(const Plan& plan, const climate::AirRow& row) { return row.from >= plan.from && plan.ready && row.from < *plan.ready; }

/// A heater that is too small for it.
std::string falls_to(const Plan& plan, Celsius floor) {
  constexpr Kelvins noticed{1};
  Celsius coldest = floor;
  for (const climate::AirRow& row : plan.air.rows()) {
    if (until_ready(plan, row)) coldest = std::min(coldest, row.air.temperature);
  }
  return floor - coldest > noticed ? fmt::format("; the shop still falls to {}", format_temperature(coldest, plan.shop.units)) : "";
}

/// The most water that is taken out in 24 h.
Litres most_in_a_day(const Plan& plan) {
  constexpr std::size_t day = 48;
  std::vector<double> removed;
  for (const climate::AirRow& row : plan.air.rows()) {
    if (until_ready(plan, row)) removed.push_back(row.work ? row.work->removed.value() : 0);
  }
  double sum = 0, most = 0;
  for (std::size_t r = 0; r < removed.size(); ++r) {
    sum += removed[r] - (r >= day ? removed[r - day] : 0);
    most = std::max(most, sum);
  }
  return Litres(most);
}

std::string takes_out(const Plan& plan) {
  return fmt::format("; it takes out up to {} a day", format_volume(most_in_a_day(plan), plan.shop.units));
}

}  // namespace

bool has_heater(const Job& job) { return job.air_in && job.room && job.room->room.heater; }
bool has_moisture(const Job& job) { return job.air_in && job.room && job.room->room.moisture; }

Change heater_at_night(const Job& job, Celsius floor) {
  const std::string words =
      fmt::format("set the heater to {} outside its hours, nights and days off", format_temperature(floor, job.shop.units));
  return {in_room([floor](KnownRoom& room) { hold_at_night(room.heating, floor); }),
          [words, floor](const Plan& plan) { return words + falls_to(plan, floor); }};
}

Change heater_throughout(const Job& job, Celsius floor) {
  const std::string words = fmt::format("set the heater to {} or more at all hours", format_temperature(floor, job.shop.units));
  return {in_room([floor](KnownRoom& room) { hold_throughout(room.heating, floor); }),
          [words, floor](const Plan& plan) { return words + falls_to(plan, floor); }};
}

std::optional<Change> dehumidifier_at(const Job& job, RelativeHumidity humidity) {
  constexpr KilogramsPerHour any_size{1000};
  const auto& has = job.room->room.moisture->dehumidifier;
  if (has && has->set_point <= humidity) return std::nullopt;
  const climate::Dehumidifier set{humidity, has ? has->capacity : any_size};
  const std::string words =
      fmt::format(fmt::runtime(has ? "set the dehumidifier to {}" : "a dehumidifier set to {}"), format_humidity(humidity));
  return Change{in_room([set](KnownRoom& room) { room.room.moisture->dehumidifier = set; }),
                [words](const Plan& plan) { return words + takes_out(plan); }};
}

}  // namespace coatday::plan
