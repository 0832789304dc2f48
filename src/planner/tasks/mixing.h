#pragma once
// How products with a pot life are mixed in the shop's air.

#include "planner/tasks/tasks.h"

namespace coatday::planner {

/// For each product with a pot life in the catalogue. It takes the air of the working hours in which the product may go on; where there are
/// none, the record.
[[nodiscard]] Mixings mixings_in(const job::Job&, const climate::AirSeries&, Instant from);

/// May the product be mixed like that in this air?
[[nodiscard]] bool keeps_to(const Mixing&, const finish::Product&, const climate::Air&);

}  // namespace coatday::planner
