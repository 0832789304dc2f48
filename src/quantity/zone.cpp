#include "quantity/zone.h"

// The only file that includes date/tz.h.
#include <date/tz.h>
#include <fmt/core.h>

#include <stdexcept>
#include <vector>

#include "quantity/nearest.h"
#include "quantity/text_scan.h"

namespace coatday {
namespace {

std::string unknown_zone(std::string_view name) {
  std::vector<std::string> names;
  for (const auto& zone : date::get_tzdb().zones) names.push_back(zone.name());
  if (const auto meant = nearest_word(name, names)) {
    return fmt::format("unknown time zone {}; did you mean '{}'?", text::quoted(name), *meant);
  }
  return fmt::format("unknown time zone {}; expected an IANA name such as America/Chicago or UTC", text::quoted(name));
}

}  // namespace

Zone::Zone() : name_("UTC") {}

tl::expected<Zone, std::string> Zone::find(std::string_view name) {
  if (name == "UTC") return Zone();
  try {
    date::get_tzdb();
  } catch (const std::runtime_error&) {
    return tl::make_unexpected(std::string("this machine has no time zone database (tzdata)"));
  }
  Zone found;
  try {
    found.zone_ = date::locate_zone(name);
    found.zone_->get_info(Instant());  // reads the zone's file now, not at first use
  } catch (const std::runtime_error&) {
    return tl::make_unexpected(unknown_zone(name));
  }
  found.name_ = name;
  return found;
}

LocalTime Zone::to_local(Instant instant) const {
  if (zone_ == nullptr) return LocalTime(instant.time_since_epoch());
  return zone_->to_local(instant);
}

Instant Zone::to_instant(LocalTime local) const {
  if (zone_ == nullptr) return Instant(local.time_since_epoch());
  return zone_->to_sys(local, date::choose::earliest);  // in a gap this is the end of the gap
}

std::chrono::seconds Zone::offset(Instant instant) const {
  if (zone_ == nullptr) return std::chrono::seconds(0);
  return zone_->get_info(instant).offset;
}

}  // namespace coatday
