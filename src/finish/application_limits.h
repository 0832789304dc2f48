#pragma once
// In which air a coat may go on.

#include <optional>
#include <string>
#include <vector>

#include "finish/conditions.h"

namespace coatday::finish {

/// The first limit that a coat from `start` until `end` breaks, or nothing. All limits hold for the room's air and for the surfaces, except
/// the humidity limit, which is for the room alone. The can must not be colder than the coldest. `limits.hold` goes on after `end`.
/// When the series do not cover the whole span, the reason is that the air is not known.
[[nodiscard]] std::optional<std::string> limit_exceeded(const Product&, const Conditions&, Instant start, Instant end,
                                                        Units = Units::metric);

/// A warning for the first row, in the room or at a surface, that is nearer its dew point than `limits.blush_warning`, or nothing.
[[nodiscard]] std::optional<std::string> blush_warning(const Product&, const Conditions&, Instant start, Instant end,
                                                       Units = Units::metric);

/// For each row of the room's air: may a coat be put on throughout the row? The hold counts from the end of the row. Where all rows of an
/// application are allowed, limit_exceeded() returns nothing. All series have the same rows.
[[nodiscard]] std::vector<bool> allowed_rows(const Product&, const Conditions&);

}  // namespace coatday::finish
