#pragma once
// Work that is no coat, and the ends of working days.

#include "input/fields.h"
#include "input/spans.h"
#include "shop/shop.h"

namespace coatday::input {

/// Work that is no coat: what the shop's and the order's have in common.
[[nodiscard]] shop::Work read_work(const Fields&, const shop::Shop&);
/// When a day's work ends: the end of the last shift on it, or on the nearest open day before. The day's end where nobody ever works.
[[nodiscard]] Instant end_of_work(const shop::Shop&, LocalDay);

/// A parser of instants in the shop's time; a date alone is its first moment.
[[nodiscard]] inline auto instant_in(const Zone& zone) {
  return [&zone](std::string_view typed) { return parse_moment(typed).map([&zone](const Moment& m) { return zone.to_instant(m.time); }); };
}

}  // namespace coatday::input
