#pragma once
// More people, for two hours or for good.

#include "planner/advice/changes.h"

namespace coatday::planner {

/// Somebody for two hours of one day, one more person, two more. It plans with one more person to see when there would be work for them.
[[nodiscard]] ChangeSizes hands(const job::Job&, const job::Request&);

}  // namespace coatday::planner
