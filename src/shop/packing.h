#pragma once
// Laying things out on equal drying places, so that none lies on another.

#include <optional>
#include <vector>

#include "shop/shop.h"

namespace coatday::shop {

/// So many equal things, by the rectangle that they cover.
struct Item {
  Metres length, width;
  int count = 1;
};

/// Equal things in a row across a place, the first with its corner at (x, y): x along the place's length, y along its width.
struct Laid {
  std::size_t item = 0;
  int count = 1;
  Metres x, y;
  Metres along, across;  ///< what one of them covers, with the gap to the next
};

/// On one place or more; the first is used from x = 0.
struct Packing {
  std::vector<std::vector<Laid>> places;
  Metres used;  ///< of the length of the only place, a gap at its end; nothing where there are several, or the place's length is not given
};

/// Wet edges must not touch, hence the gap. Rows across the place, the longest first, each thing in the first row that has room (first fit, decreasing): sound, not always the
/// tightest. A side that is not given does not bind but is used once; a hook takes one thing, by its longer side. Nothing if an item is
/// too big, or `place.count` places are too few.
[[nodiscard]] std::optional<Packing> pack(const DryingPlace&, const std::vector<Item>&, Metres gap);

}  // namespace coatday::shop
