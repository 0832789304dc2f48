#pragma once
// Air that is asked for again and again: made once, for as long as the longest plan needs it.

#include "plan/job.h"

namespace coatday::plan {

/// The same air. The first that is asked for is kept, reaching so much further, and serves what lies within it; its half hours are kept too.
[[nodiscard]] AirMaker remembered(AirMaker, date::days further);

}  // namespace coatday::plan
