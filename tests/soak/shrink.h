#pragma once
// Makes a case smaller as long as the same kind of find remains.

#include <functional>

#include "tests/soak/case.h"

namespace coatday::soak {

using StillFound = std::function<bool(const Case&)>;

struct Shrunk {
  Case small;
  int tries = 0;
};

/// Drops orders, items and keys, then halves numbers, until nothing more can go or the tries are used up.
[[nodiscard]] Shrunk shrink(const Case&, const StillFound&, int most_tries);

}  // namespace coatday::soak
