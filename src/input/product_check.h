#pragma once
// What a product needs, and what cannot be, once all its layers are on each other.

#include "input/product.h"

namespace coatday::input {

/// The product with its sources and fitted laws. Missing or impossible values are mistakes at the product.
[[nodiscard]] finish::Product complete(ProductDraft draft, Mistakes&);

}  // namespace coatday::input
