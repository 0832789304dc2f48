#pragma once
// Solvent vapour: the air that it takes, against what the shop has. No approval of either.

#include <optional>
#include <string>

#include "job/plan.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report {

/// Nothing where no coat of the plan has solvent in it.
[[nodiscard]] std::optional<Section> vapour(const job::Plan&, const Texts&);
/// A coat's solvent and its air; empty where it has none.
[[nodiscard]] std::string vapour_text(const job::Event&, Units);

}  // namespace coatday::report
