#pragma once
// Activities, resources and the like have numbers of type int; containers want a size.

#include <cstddef>

namespace coatday::solver {

[[nodiscard]] constexpr std::size_t at(int i) { return static_cast<std::size_t>(i); }

}  // namespace coatday::solver
