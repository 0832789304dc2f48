#pragma once
// Where exactly each load dries: which of a shop's equal places, which stretch of one.

#include <optional>
#include <vector>

#include "plan/make/model.h"

namespace coatday::plan {

struct Berth {
  std::size_t keep = 0;      ///< index into TaskGraph::keeps
  std::size_t choice = 0;    ///< index into the load's choices
  std::vector<int> numbers;  ///< from 0; one for each place of the choice's packing
  int begin = 0;             ///< step along the place; 0 where whole places are held
  solver::Time from = 0, until = 0;
};

/// A load stays where it was when it can. Nothing when stretches lie so that one finds no room, though there is enough in all; where
/// whole places are held that cannot be.
[[nodiscard]] std::optional<std::vector<Berth>> berths(Metres gap, const Loads&, const TaskGraph&, const Model&, const solver::Schedule&);

}  // namespace coatday::plan
