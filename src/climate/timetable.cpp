#include "climate/timetable.h"

#include <algorithm>

namespace coatday::climate {
namespace {

bool matches(const HeatingRule& rule, LocalDay day) {
  if (rule.first && day < *rule.first) return false;
  if (rule.last && day > *rule.last) return false;
  return rule.days.empty() || std::find(rule.days.begin(), rule.days.end(), weekday(day)) != rule.days.end();
}

}  // namespace

const HeatingRule* Timetable::on(LocalDay day) const {
  const auto found = std::find_if(rules.rbegin(), rules.rend(), [day](const HeatingRule& rule) { return matches(rule, day); });
  return found == rules.rend() ? nullptr : &*found;
}

std::optional<Celsius> Timetable::set_point(LocalTime t) const {
  const LocalDay day = day_of(t);
  const HeatingRule* rule = on(day);
  if (!rule) return night;
  const auto clock = t - day;
  for (const HeatedHours& hours : rule->heated)
    if (hours.from <= clock && clock < hours.until) return hours.set_point;
  return night ? night : rule->otherwise;
}

}  // namespace coatday::climate
