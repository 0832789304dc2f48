#pragma once
// Room for what stands aside as a resource: what is coated and may not be packed yet fits onto the drying places and into that room.

#include "planner/model/model.h"

namespace coatday::planner {

/// Holds for each coat, from its start until the next step or dry to pack, of so many parts: in all, and among those that share its kinds of
/// places. Adds nothing where the shop has room enough, or none at all. Where drying places are counted in lengths, or not all are taken, more
/// may stand aside than there is room for: then `tighten`.
void add_set_aside(Model&, const job::Job&, const Loads&, const TaskGraph&, Clocks&, const Grid&);

/// No more than so many parts may be coated and not packed; false where that is no less, or less than the largest load or what is done needs.
[[nodiscard]] bool tighten(Model&, int parts);

}  // namespace coatday::planner
