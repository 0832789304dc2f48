#pragma once
// Requirements in the maker's words.

#include "plan/make/events.h"

namespace coatday::plan {

/// One sentence for each requirement of a contradiction, no sentence twice.
[[nodiscard]] std::vector<std::string> in_words(const std::vector<solver::Tag>&, const Job&, const Loads&, const TaskGraph&, const Model&,
                                                Clocks&, const Grid&);

}  // namespace coatday::plan
