// Entries as iCalendar. Escaping and the form of values are libical's; the time zone's observances are the ones that we planned with,
// since those that libical makes of the machine's zone files go back to 1883 and carry its own ids.
#include "report/files/calendar.h"

#include <libical/ical.h>

#include <memory>

#include "report/document/lines.h"
#include "report/files/calendar_entries.h"
#include "report/words.h"

namespace coatday::report {
namespace {

/// A component whose parent owns it once it is added.
using Component = std::unique_ptr<icalcomponent, decltype(&icalcomponent_free)>;
Component component(icalcomponent_kind kind) { return {icalcomponent_new(kind), &icalcomponent_free}; }
void add(const Component& to, Component child) { icalcomponent_add_component(to.get(), child.release()); }
void add(const Component& to, icalproperty* property) { icalcomponent_add_property(to.get(), property); }

/// Text of the user's that moves no cursor; its spaces may break again.
std::string text(std::string value) {
  for (std::size_t at = 0; (at = value.find("\u00a0", at)) != std::string::npos;) value.replace(at, 2, " ");
  return harmless_text(value);
}

icaltimetype date_of(LocalDay day) {
  const year_month_day ymd(day);
  icaltimetype t = icaltime_null_date();
  t.year = static_cast<int>(ymd.year());
  t.month = static_cast<int>(static_cast<unsigned>(ymd.month()));
  t.day = static_cast<int>(static_cast<unsigned>(ymd.day()));
  return t;
}

icaltimetype wall_time(LocalTime local) {
  icaltimetype t = date_of(day_of(local));
  const date::hh_mm_ss clock(local - day_of(local));
  t.is_date = 0;
  t.hour = static_cast<int>(clock.hours().count());
  t.minute = static_cast<int>(clock.minutes().count());
  t.second = static_cast<int>(clock.seconds().count());
  return t;
}

icaltimetype utc_time(Instant t) {
  icaltimetype time = wall_time(LocalTime(t.time_since_epoch()));
  time.zone = icaltimezone_get_utc_timezone();
  return time;
}

/// The shop's clock shows this hour twice.
bool comes_twice(Instant t, const Zone& zone) {
  constexpr std::chrono::hours day(24);
  const LocalTime local = zone.to_local(t);
  const auto also = [&](Instant near) {
    const Instant other(local.time_since_epoch() - zone.offset(near));
    return other != t && zone.to_local(other) == local;
  };
  return also(t - day) || also(t + day);
}

/// In the shop's time; in UTC where that comes twice: it would mean the first (RFC 5545, 3.3.5), but not every importer reads it so.
void add_time(const Component& event, icalproperty_kind kind, Instant t, const Zone& zone) {
  const bool twice = comes_twice(t, zone);
  icalproperty* property = icalproperty_new(kind);
  icalproperty_set_value(property, icalvalue_new_datetime(twice ? utc_time(t) : wall_time(zone.to_local(t))));
  if (!twice) icalproperty_add_parameter(property, icalparameter_new_tzid(zone.name().c_str()));
  add(event, property);
}

void add_date(const Component& event, icalproperty_kind kind, LocalDay day) {
  icalproperty* property = icalproperty_new(kind);
  icalproperty_set_value(property, icalvalue_new_date(date_of(day)));
  icalproperty_add_parameter(property, icalparameter_new_value(ICAL_VALUE_DATE));
  add(event, property);
}

Component observance(Instant onset, std::chrono::seconds before, std::chrono::seconds after) {
  Component part = component(after > before ? ICAL_XDAYLIGHT_COMPONENT : ICAL_XSTANDARD_COMPONENT);
  add(part, icalproperty_new_dtstart(wall_time(LocalTime(onset.time_since_epoch() + before))));
  add(part, icalproperty_new_tzoffsetfrom(static_cast<int>(before.count())));
  add(part, icalproperty_new_tzoffsetto(static_cast<int>(after.count())));
  return part;
}

/// The last second with the earlier offset is before the change.
Instant change_between(Instant before, Instant after, const Zone& zone) {
  const auto old = zone.offset(before);
  while (after - before > std::chrono::seconds(1)) {
    const Instant middle = before + (after - before) / 2;
    (zone.offset(middle) == old ? before : after) = middle;
  }
  return after;
}

/// The observances in force from `first` to `last`, the first of them with its beginning.
Component time_zone(const Zone& zone, Instant first, Instant last) {
  constexpr std::chrono::hours day(24), year(366 * 24);
  Component all = component(ICAL_VTIMEZONE_COMPONENT);
  add(all, icalproperty_new_tzid(zone.name().c_str()));
  const Instant from = first - year;
  add(all, observance(from, zone.offset(from), zone.offset(from)));
  for (Instant t = from; t < last + day; t += day) {
    const Instant next = t + day;
    if (zone.offset(next) != zone.offset(t)) add(all, observance(change_between(t, next, zone), zone.offset(t), zone.offset(next)));
  }
  return all;
}

Component alarm_of(const CalendarAlarm& alarm) {
  Component part = component(ICAL_VALARM_COMPONENT);
  add(part, icalproperty_new_action(ICAL_ACTION_DISPLAY));
  add(part, icalproperty_new_description(text(alarm.text).c_str()));
  icaltriggertype trigger{};
  trigger.time = icaltime_null_time();
  trigger.duration = icaldurationtype_from_int(static_cast<int>(std::chrono::seconds(alarm.after_start).count()));
  add(part, icalproperty_new_trigger(trigger));
  return part;
}

// Importers take the entry with the higher sequence, and of equal ones that with the later stamp (RFC 5546, 2.1.5). A plan knows nothing of the
// one before, so both are the moment of writing: the sequence in minutes, which fits its 31 bits.
void add_revision(const Component& event, Instant written) {
  constexpr Instant beginning = date::sys_days(date::year(2020) / 1 / 1);
  add(event, icalproperty_new_dtstamp(utc_time(written)));
  add(event, icalproperty_new_lastmodified(utc_time(written)));
  const auto minutes = std::chrono::floor<Minutes>(written - beginning).count();
  add(event, icalproperty_new_sequence(static_cast<int>(std::max<std::int64_t>(minutes, 0))));
}

Component event_of(const CalendarEntry& entry, const Zone& zone, Instant written) {
  Component event = component(ICAL_VEVENT_COMPONENT);
  add(event, icalproperty_new_uid(entry.uid.c_str()));
  add_revision(event, written);
  if (entry.all_day) {
    add_date(event, ICAL_DTSTART_PROPERTY, *entry.all_day);
    add_date(event, ICAL_DTEND_PROPERTY, *entry.all_day + date::days(1));
    add(event, icalproperty_new_transp(ICAL_TRANSP_TRANSPARENT));
  } else {
    add_time(event, ICAL_DTSTART_PROPERTY, entry.start, zone);
    add_time(event, ICAL_DTEND_PROPERTY, entry.end, zone);
  }
  add(event, icalproperty_new_summary(text(entry.summary).c_str()));
  add(event, icalproperty_new_location(text(entry.location).c_str()));
  add(event, icalproperty_new_description(text(entry.description).c_str()));
  for (const CalendarAlarm& alarm : entry.alarms) add(event, alarm_of(alarm));
  return event;
}

/// Lines of at most 75 octets (RFC 5545, 3.1), broken between characters. libical 3.0.16 folds between the CR and the LF of a line that would
/// just fit; what it folded is put together first, which mends that too.
std::string folded_anew(std::string content) {
  constexpr std::size_t longest = 75;
  for (std::size_t at = 0; (at = content.find("\r\n ", at)) != std::string::npos;) content.erase(at, 3);
  std::string out;
  std::size_t octets = 0;
  for (std::size_t i = 0; i < content.size();) {
    std::size_t next = i + 1;
    while (next < content.size() && (static_cast<unsigned char>(content[next]) & 0xC0) == 0x80) ++next;
    const bool line_end = content[i] == '\r' || content[i] == '\n';
    if (!line_end && octets + (next - i) > longest) {
      out += "\r\n ";
      octets = 1;
    }
    octets = line_end ? 0 : octets + (next - i);
    out.append(content, i, next - i);
    i = next;
  }
  return out;
}

}  // namespace

std::string calendar_ics(const job::Plan& plan, const std::string& order, Units units, Instant written, std::string_view version) {
  const std::vector<CalendarEntry> entries = calendar_entries(plan, order, units);
  Instant first = plan.from, last = plan.from;
  for (const CalendarEntry& entry : entries) {
    first = std::min(first, entry.start);
    last = std::max(last, entry.end);
  }
  const Component calendar = component(ICAL_VCALENDAR_COMPONENT);
  add(calendar, icalproperty_new_prodid(("-//coatday//" + std::string(version) + "//EN").c_str()));
  add(calendar, icalproperty_new_version("2.0"));
  add(calendar, time_zone(plan.shop.zone, first, last));
  for (const CalendarEntry& entry : entries) add(calendar, event_of(entry, plan.shop.zone, written));
  char* const buffer = icalcomponent_as_ical_string_r(calendar.get());
  const std::string content(buffer);
  icalmemory_free_buffer(buffer);
  return folded_anew(content);
}

}  // namespace coatday::report
