#include "planner/advice/room.h"

#include <algorithm>

#include <fmt/core.h>

#include "planner/advice/air_keys.h"

namespace coatday::planner {

namespace {

using climate::KnownRoom;
using climate::Timetable;

/// On days without a rule, too: no rule counts for less than the first.
void hold_at_night(KnownRoom& room, Celsius floor) {
  const auto raised = [floor](std::optional<Celsius> set) { return std::max(set.value_or(floor), floor); };
  Timetable& timetable = room.heating;
  if (timetable.night) timetable.night = raised(timetable.night);
  for (climate::HeatingRule& rule : timetable.rules) rule.otherwise = raised(rule.otherwise);
  climate::HeatingRule other_days;
  other_days.otherwise = floor;
  timetable.rules.insert(timetable.rules.begin(), std::move(other_days));
}

void hold_throughout(KnownRoom& room, Celsius floor) {
  hold_at_night(room, floor);
  for (climate::HeatingRule& rule : room.heating.rules) {
    for (climate::HeatedHours& hours : rule.heated) hours.set_point = std::max(hours.set_point, floor);
  }
}

using ChangeRoom = std::function<void(KnownRoom&)>;

std::function<void(job::Job&, Instant&)> in_room(ChangeRoom change_room) {
  return [change_room = std::move(change_room)](job::Job& job, Instant&) {
    KnownRoom room = *job.room;
    change_room(room);
    job.air = job.air_in(room);
    job.room = std::make_shared<const KnownRoom>(std::move(room));
  };
}

bool until_ready(const job::Plan& plan, const climate::AirRow& row) {
  return row.from >= plan.from && plan.ready && row.from < *plan.ready;
}

/// A heater that is too small for what it is set to.
std::string falls_to(const job::Plan& plan, const Timetable& heating, Celsius floor) {
  constexpr Kelvins noticed{1};
  Celsius coldest = floor;
  for (const climate::AirRow& row : plan.air.rows()) {
    const auto set_point = heating.set_point(plan.shop.zone.to_local(row.from));
    const bool set = set_point && *set_point >= floor && row.origin == climate::Origin::weather;
    if (until_ready(plan, row) && set) coldest = std::min(coldest, row.air.temperature);
  }
  return floor - coldest > noticed ? fmt::format("; the shop still falls to {}", format_temperature(coldest, plan.shop.units)) : "";
}

using Hold = void (*)(KnownRoom&, Celsius);

Change held(const job::Job& job, Celsius floor, Hold hold, std::string words, Keys keys) {
  KnownRoom room = *job.room;
  hold(room, floor);
  return {in_room([floor, hold](KnownRoom& other) { hold(other, floor); }),
          [words = std::move(words), heating = std::move(room.heating), floor](const job::Plan& plan) {
            return words + falls_to(plan, heating, floor);
          },
          nullptr, std::move(keys)};
}

/// The most water that is taken out in 24 h.
Litres most_in_a_day(const job::Plan& plan) {
  constexpr std::size_t day = 48;
  std::vector<double> removed;
  for (std::size_t r = 0; r < plan.air.rows().size(); ++r) {
    if (until_ready(plan, plan.air.rows()[r])) removed.push_back(plan.air.work(r).value_or(climate::RoomWork{}).removed.value());
  }
  double sum = 0, most = 0;
  for (std::size_t r = 0; r < removed.size(); ++r) {
    sum += removed[r] - (r >= day ? removed[r - day] : 0);
    most = std::max(most, sum);
  }
  return Litres(most);
}

std::string takes_out(const job::Plan& plan) {
  return fmt::format("; it takes out up to {} a day", format_volume(most_in_a_day(plan), plan.shop.units));
}

}  // namespace

bool has_room(const job::Job& job) { return job.air_in && job.room; }
bool has_moisture(const job::Job& job) { return has_room(job) && job.room->room.moisture; }

std::string at_night_text(const job::Job& job, Celsius floor) {
  const std::string degrees = format_temperature(floor, job.shop.units);
  if (job.room && job.room->room.heater) return fmt::format("set the heater to {} outside its hours, nights and days off", degrees);
  return fmt::format("heat outside the heated hours, nights and days off: {} or warmer", degrees);
}

std::string throughout_text(const job::Job& job, Celsius floor) {
  const std::string degrees = format_temperature(floor, job.shop.units);
  if (job.room && job.room->room.heater) return fmt::format("set the heater to {} or more at all hours", degrees);
  return fmt::format("keep the shop at {} or warmer, nights too", degrees);
}

Change heated_at_night(const job::Job& job, Celsius floor) {
  return held(job, floor, hold_at_night, at_night_text(job, floor), at_night_keys(job, floor));
}
Change heated_throughout(const job::Job& job, Celsius floor) {
  return held(job, floor, hold_throughout, throughout_text(job, floor), throughout_keys(job, floor));
}

std::optional<Change> dehumidifier_at(const job::Job& job, RelativeHumidity humidity) {
  constexpr KilogramsPerHour any_size{100};  // the most that the shop file takes
  const auto& has = job.room->room.moisture->dehumidifier;
  if (has && has->set_point <= humidity) return std::nullopt;
  const climate::Dehumidifier set{humidity, has ? has->capacity : any_size};
  const std::string words =
      fmt::format(fmt::runtime(has ? "set the dehumidifier to {}" : "a dehumidifier set to {}"), format_humidity(humidity));
  return Change{in_room([set](KnownRoom& room) { room.room.moisture->dehumidifier = set; }),
                [words](const job::Plan& plan) { return words + takes_out(plan); }, nullptr,
                dehumidifier_keys(humidity, has.has_value(), any_size)};
}

}  // namespace coatday::planner
