#pragma once
// Many plans ask for the same air. It is made once, for as long as the longest of them needs it.

#include "job/job.h"

namespace coatday::job {

/// Gives the same air as the maker. It keeps the first span that somebody asks for, with its half hours, and answers from it. A longer span that
/// holds the first one replaces it. It reaches four weeks further than asked, for plans that start later.
[[nodiscard]] AirMaker cached_air(AirMaker);

}  // namespace coatday::job
