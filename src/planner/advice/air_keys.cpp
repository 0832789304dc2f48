#include "planner/advice/air_keys.h"

#include <algorithm>

#include <fmt/core.h>

namespace coatday::planner {

namespace {

using climate::HeatedHours;
using climate::HeatingRule;

std::string degrees(const job::Job& job, Celsius t) { return format_temperature(t, job.shop.units); }

std::string heated_text(const job::Job& job, const std::vector<HeatedHours>& heated, Celsius floor) {
  std::string text;
  for (const HeatedHours& hours : heated) {
    text += fmt::format("{}{} at {}", text.empty() ? "" : ", ", hours_text(hours.from, hours.until),
                        degrees(job, std::max(hours.set_point, floor)));
  }
  return text;
}

/// The same air at all hours.
bool is_constant(const job::Job& job) { return !job.air_in && (!job.room || job.room->heating.rules.empty()); }

}  // namespace

std::string hours_text(Minutes from, Minutes until) {
  return fmt::format("{:02}:{:02}-{:02}:{:02}", from.count() / 60, from.count() % 60, until.count() / 60, until.count() % 60);
}

Keys at_night_keys(const job::Job& job, Celsius floor) {
  if (is_constant(job)) return {};
  const climate::Timetable& heating = job.room->heating;
  const auto warmer = [floor](const HeatingRule& rule) { return rule.otherwise && *rule.otherwise > floor; };
  if (heating.night || std::none_of(heating.rules.begin(), heating.rules.end(), warmer)) return {"air.night=" + degrees(job, floor)};
  Keys keys;
  for (std::size_t r = 0; r < heating.rules.size(); ++r) {
    if (!warmer(heating.rules[r])) keys.push_back(fmt::format("air.timetable.{}.otherwise={}", r + 1, degrees(job, floor)));
  }
  return keys;
}

Keys throughout_keys(const job::Job& job, Celsius floor) {
  if (is_constant(job)) return {"air.constant.temperature=" + degrees(job, floor)};
  Keys keys = at_night_keys(job, floor);
  const std::vector<HeatingRule>& rules = job.room->heating.rules;
  for (std::size_t r = 0; r < rules.size(); ++r) {
    const auto colder = [floor](const HeatedHours& hours) { return hours.set_point < floor; };
    if (std::any_of(rules[r].heated.begin(), rules[r].heated.end(), colder))
      keys.push_back(fmt::format("air.timetable.{}.heated={}", r + 1, heated_text(job, rules[r].heated, floor)));
  }
  return keys;
}

Keys humidity_keys(const job::Job& job, RelativeHumidity ceiling) {
  if (job.air_in) return {};
  if (is_constant(job)) return {fmt::format("air.constant.humidity={:.0f} %", 100 * ceiling.value())};
  Keys keys;
  const std::vector<HeatingRule>& rules = job.room->heating.rules;
  for (std::size_t r = 0; r < rules.size(); ++r) {
    if (rules[r].humidity && *rules[r].humidity > ceiling)
      keys.push_back(fmt::format("air.timetable.{}.humidity={:.0f} %", r + 1, 100 * ceiling.value()));
  }
  return keys;
}

Keys dehumidifier_keys(RelativeHumidity humidity, bool has_one, KilogramsPerHour removes) {
  Keys keys{fmt::format("air.dehumidifier.set point={:.0f} %", 100 * humidity.value())};
  if (!has_one) keys.push_back(fmt::format("air.dehumidifier.removes={:.0f} g/h", 1000 * removes.value()));
  return keys;
}

}  // namespace coatday::planner
