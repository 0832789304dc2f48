#pragma once
// How long each stage takes in air that stays the same: the clocks in closed form.

#include <optional>
#include <string>

#include "finish/product.h"

namespace coatday::finish {

/// From application, with both sides of what is known.
struct StageTime {
  Hours fast{0}, expected{0}, slow{0};
  double by_laws = 1;  ///< times or divided by so much, by the stated ranges of its laws' parameters alone
};

struct StageTimes {
  PerStage<std::optional<StageTime>> times;      ///< none where the product has no such stage, or a law does not reach so far
  PerStage<std::optional<std::string>> refused;  ///< then why: the limit, and the law's range
  std::optional<std::string>
      may_not_go_on;  ///< the first limit of application that this air breaks, by limit_exceeded() of finish/application_limits.h

  [[nodiscard]] bool any() const;
};

/// A stage beyond the range of its law is refused, not extrapolated. As CureClock in constant air, to rounding.
[[nodiscard]] StageTimes times_in(const Product&, const climate::Air&, Units = Units::metric);

}  // namespace coatday::finish
