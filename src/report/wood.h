#pragma once
// Wood in one air: its equilibrium, and the movement of a board that comes from another. And the wood of an order through its year.

#include <optional>
#include <string>

#include "job/wood_findings.h"
#include "report/document/lines.h"
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
[[nodiscard]] std::string wood_at_text(const climate::Air&, const std::optional<MovedBoard>&, const TextStyle&);
[[nodiscard]] std::string wood_at_json(const climate::Air&, const std::optional<MovedBoard>&);  ///< "coatday-wood-at/1"

/// Whether it is ready to be coated, how its boards cup, and how they move on their base.
[[nodiscard]] std::string wood_text(const job::Job&, const job::Plan&, const job::WoodFindings&, const TextStyle&);
[[nodiscard]] std::string wood_json(const job::Job&, const job::Plan&, const job::WoodFindings&,
                                    std::string_view version);  ///< "coatday-wood/1"

}  // namespace coatday::report
