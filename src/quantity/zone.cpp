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

// A name that stands for the same place on every machine. The database's own names begin with a capital letter; what a system adds beside
// them does not: "localtime", "posix/...", "right/..." (IANA Time Zone Database, theory.html, "Timezone identifiers"; from memory).
bool is_everywhere(std::string_view name) { return !name.empty() && name[0] >= 'A' && name[0] <= 'Z' && name != "Factory"; }

std::string unknown_zone(std::string_view name) {
  std::vector<std::string> names;
  for (const auto& zone : date::get_tzdb().zones) {
    if (is_everywhere(zone.name())) names.push_back(zone.name());
  }
  if (const auto meant = nearest_word(name, names)) {
    return fmt::format("unknown time zone {}; did you mean '{}'?", text::quoted(name), *meant);
  }
  return fmt::format("unknown time zone {}; expected a name that means the same on every machine, such as America/Chicago or UTC",
                     text::quoted(name));
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
  if (!is_everywhere(name)) return tl::make_unexpected(unknown_zone(name));
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
