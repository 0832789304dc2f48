#pragma once
// What a part rests on while a face dries, and the places that offer it.

#include "piece/piece.h"
#include "shop/shop.h"

namespace coatday::job {

/// Kinds of drying place that a support can use.
[[nodiscard]] bool suits(piece::Support, shop::PlaceKind);

}  // namespace coatday::job
