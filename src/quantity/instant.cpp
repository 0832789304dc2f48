#include "quantity/instant.h"

#include <algorithm>

namespace coatday {
namespace {

// Less than this is the noise of floating point, not a reason to wait another minute.
constexpr Hours noise = std::chrono::milliseconds(1);
constexpr Hours never = std::chrono::hours(100 * 366 * 24);

// Written so that not-a-number is "never" too.
Hours finite(Hours span) { return span < never ? std::max(span, -never) : never; }

}  // namespace

Minutes ceil_minutes(Hours span) { return std::chrono::ceil<Minutes>(finite(span) - noise); }

Instant later(Instant from, Hours elapsed) { return from + std::chrono::ceil<std::chrono::seconds>(finite(elapsed) - noise); }

}  // namespace coatday
