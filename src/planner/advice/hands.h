#pragma once
// More people, for two hours or for good.

#include "planner/advice/changes.h"

namespace coatday::planner {

/// Somebody for two hours of one day. It plans with one more person to see when there would be work for them.
[[nodiscard]] ChangeSizes hands_for_two_hours(const job::Job&, const job::Request&);
[[nodiscard]] Amount people(const job::Job&);

}  // namespace coatday::planner
