#pragma once
// Air that is asked for again and again: made once, for as long as the longest plan needs it.

#include "job/job.h"

namespace coatday::job {

/// The same air. The first that is asked for is kept, with its half hours, and serves what lies within it; so does a longer one that holds it.
/// It reaches four weeks further than asked, for plans that start later.
[[nodiscard]] AirMaker cached_air(AirMaker);

}  // namespace coatday::job
