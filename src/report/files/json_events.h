#pragma once
// Events and pieces in the JSON.

#include "report/files/json_parts.h"

namespace coatday::report {

[[nodiscard]] Json event_json(const job::Plan&, const job::Event&);
[[nodiscard]] Json piece_json(const job::Plan&, std::size_t piece);

}  // namespace coatday::report
