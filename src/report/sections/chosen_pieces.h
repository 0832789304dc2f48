#pragma once
// Which pieces a section is about: all of them, or those of one order.

#include <algorithm>
#include <optional>
#include <vector>

namespace coatday::report {

struct ChosenPieces {
  std::optional<std::vector<std::size_t>> pieces{};  ///< none: all

  [[nodiscard]] bool has(std::size_t piece) const { return !pieces || std::find(pieces->begin(), pieces->end(), piece) != pieces->end(); }
};

}  // namespace coatday::report
