#pragma once
// What the shop asks for its work.

#include <optional>

#include "quantity/quantity.h"

namespace coatday::shop {

/// In the shop's currency; none where its file does not say.
struct Rates {
  std::optional<Money> hour;              ///< of one person's work
  std::optional<double> material_markup;  ///< on what materials cost: 0.15 asks 15 % more
};

}  // namespace coatday::shop
