#pragma once
// Wood in one air: its equilibrium, and the movement of a board that comes from another.

#include <optional>
#include <string>

#include "report/document/document.h"
#include "report/words.h"
#include "wood/movement.h"

namespace coatday::report {

struct MovedBoard {
  const wood::Species* species = nullptr;
  Metres width;  ///< across the grain, in the air `from`
  wood::RingAngle cut;
  climate::Air from;
};

/// Why there is no answer: an air that the table of equilibria does not reach, or a movement outside the range of its coefficients.
[[nodiscard]] std::optional<std::string> no_wood_at(const climate::Air&, const std::optional<MovedBoard>&, Units);
/// Both where no_wood_at() has nothing to say.
[[nodiscard]] Document wood_at(const climate::Air&, const std::optional<MovedBoard>&, Units);
[[nodiscard]] std::string wood_at_json(const climate::Air&, const std::optional<MovedBoard>&);  ///< "coatday-wood-at/1"

}  // namespace coatday::report
