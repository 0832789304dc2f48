#pragma once
// What joins instants and local time.

#include <string>
#include <string_view>

#include <tl/expected.hpp>

#include "quantity/instant.h"

namespace date {
class time_zone;  // its header costs a second to compile
}

namespace coatday {

/// A time zone by its IANA name.
class Zone {
 public:
  Zone();  ///< UTC
  /// Fails with a message when the name is not in the machine's zone database.
  [[nodiscard]] static tl::expected<Zone, std::string> find(std::string_view name);

  [[nodiscard]] const std::string& name() const { return name_; }
  [[nodiscard]] LocalTime to_local(Instant) const;
  /// A wall time that summer time skips is moved on to the end of the gap; one that comes twice is taken the first time.
  [[nodiscard]] Instant to_instant(LocalTime) const;
  /// Offset from UTC at that instant.
  [[nodiscard]] std::chrono::seconds offset(Instant) const;

 private:
  std::string name_;
  const date::time_zone* zone_ = nullptr;  // none for UTC; else owned by the zone database, which lives as long as the program
};

}  // namespace coatday
