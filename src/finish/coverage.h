#pragma once
// How much finish a surface takes.

#include <span>

#include "finish/schedule.h"

namespace coatday::finish {

/// Share of the material that ends on the work. Source per method in coverage.cpp.
struct Transfer {
  double efficiency;
  std::string_view source;
};
[[nodiscard]] Transfer transfer(Method);

/// A surface that takes finish at one rate.
struct Surface {
  SquareMetres area;
  bool end_grain = false;
  bool bare = false;  ///< wood without a film on it yet
};

/// Litres of product from the can for one coat over these surfaces: area / (spreading rate x transfer efficiency), more on bare wood and
/// most on its end grain. Losses per session are not in it.
[[nodiscard]] Litres need(const Product&, Method, std::span<const Surface>);
/// The same in the film that a step asks for.
[[nodiscard]] Litres need(const Step&, const Product&, Method, std::span<const Surface>);

}  // namespace coatday::finish
