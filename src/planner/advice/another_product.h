#pragma once
// Another product of the same role.

#include "planner/advice/changes.h"

namespace coatday::planner {

/// Other products in place of one that is used. They dry faster by their records, and some schedule has them on the same material. validate()
/// refuses nothing and warns of nothing that it did not before: what goes over and under, both faces, methods, food. The fastest is last.
[[nodiscard]] std::vector<ChangeSizes> another_product(const job::Job&);

}  // namespace coatday::planner
