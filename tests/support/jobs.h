#pragma once
// Small invented jobs, in code, for tests and benchmarks. The times are round numbers made up for the tests.

#include <string>

#include "job/job.h"

namespace coatday::tests {

/// Everything that the tests turn.
struct JobKnobs {
  climate::Air air{Celsius(23), RelativeHumidity(0.5)};
  int people = 1;
  int points = 4;
  int racks = 4;
  int pieces = 1;
  int doors = 0;           ///< doors on racks in the first piece
  bool scuff_step = true;  ///< the schedule scuffs between the coats by itself
  std::vector<LocalDay> closed;
  Hours both_faces_within{24};
};

/// Boards with four legs each, two coats of a clear, in a shop that works Monday to Friday 08:00 to 12:00 and 13:00 to 17:00, UTC.
[[nodiscard]] job::Job make_job(const JobKnobs& = {});

/// Monday 11 January 2027, 08:00 UTC.
[[nodiscard]] Instant monday();

}  // namespace coatday::tests
