#pragma once
// The plan as a calendar: iCalendar (RFC 5545).

#include <string>
#include <string_view>

#include "job/plan.h"
#include "quantity/text.h"

namespace coatday::report {

/// What every calendar of ours holds near its beginning.
inline constexpr std::string_view calendar_mark = "PRODID:-//coatday//";

/// `written` is the moment of writing: a later one makes importers take the newer plan. `version` is the program's.
[[nodiscard]] std::string calendar_ics(const job::Plan&, const std::string& order, Units, Instant written, std::string_view version);

}  // namespace coatday::report
