#pragma once
// A label with times at several airs says how fast the clock runs better than a class default.

#include "finish/product.h"

namespace coatday::finish {

struct Fit {
  Law law;
  double residual = 0;  ///< largest |ln(label time / fitted time)|
};

/// Fits the activation energy, or the wet-bulb share, of the class law to the rows by least squares in ln(time). None with fewer than two
/// rows that share a stage of that clock.
[[nodiscard]] std::optional<Fit> fit_law(const Product&, Clock);

}  // namespace coatday::finish
