#pragma once
// Places that what is done holds now. The past cannot be wrong: what finds no room was laid elsewhere.

#include "planner/tasks/tasks.h"

namespace coatday::planner {

class PlacesTaken {
 public:
  PlacesTaken(const Loads&, Metres gap);

  /// Puts a load on the first of its choices that has room beside the loads before it; false where none has.
  [[nodiscard]] bool take(const Load&);

 private:
  [[nodiscard]] bool take(const PlaceChoice&);

  std::vector<int> steps_;              // of one place, by kind
  std::vector<std::vector<int>> free_;  // steps left on each place, by kind
};

}  // namespace coatday::planner
