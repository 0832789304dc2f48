#pragma once
// The wood of an order through its year.

#include <string>

#include "job/wood_findings.h"
#include "report/document/lines.h"

namespace coatday::report {

/// Whether it is ready to be coated, how its boards cup, and how they move on their base.
[[nodiscard]] std::string wood_text(const job::Job&, const job::Plan&, const job::WoodFindings&, const TextStyle&);
[[nodiscard]] std::string wood_json(const job::Job&, const job::Plan&, const job::WoodFindings&,
                                    std::string_view version);  ///< "coatday-wood/1"

}  // namespace coatday::report
