#pragma once
// How long finishes take in air that stays the same.

#include <optional>
#include <string>

#include "finish/catalogue.h"
#include "report/document/lines.h"

namespace coatday::report {

/// The time of each stage in this air, with both sides. Only where why_not_at() returns nothing.
[[nodiscard]] std::string finish_at_text(const finish::Product&, const climate::Air&, const TextStyle&);
[[nodiscard]] std::string finish_at_json(const finish::Product&, const climate::Air&);
/// Why the finish has no times in this air: which limit, and the range.
[[nodiscard]] std::optional<std::string> why_not_at(const finish::Product&, const climate::Air&, Units);
/// Dry to recoat, for all.
[[nodiscard]] std::string finishes_at_text(const finish::Catalogue&, const climate::Air&, const TextStyle&);

}  // namespace coatday::report
