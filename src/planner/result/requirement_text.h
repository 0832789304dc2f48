#pragma once
// Requirements in the maker's words.

#include "planner/result/events.h"

namespace coatday::planner {

/// One sentence for each requirement of a contradiction, no sentence twice, and no more than five.
[[nodiscard]] std::vector<std::string> requirement_text(const std::vector<solver::Tag>&, const job::Job&, const Loads&, const TaskGraph&,
                                                        const Model&, Clocks&, const Grid&);
/// The step that cannot be in time, in one sentence: it begins too late even if everything before it is as early as it can be. Empty where no
/// step can be named.
[[nodiscard]] std::string requirement_in_short(const std::vector<solver::Tag>&, const job::Job&, const Loads&, const TaskGraph&,
                                               const Model&, Clocks&, const Grid&);
/// The step that found no place, and what most often kept it from one.
[[nodiscard]] std::vector<std::string> blocker_text(int activity, const std::vector<solver::Tag>& blockers, const job::Job&, const Loads&,
                                                    const TaskGraph&, const Model&, Clocks&, const Grid&);

}  // namespace coatday::planner
