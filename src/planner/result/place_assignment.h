#pragma once
// Where exactly each load dries: which of a shop's equal places, which stretch of one.

#include <optional>
#include <vector>

#include "planner/model/model.h"

namespace coatday::planner {

struct Berth {
  std::size_t keep = 0;      ///< index into TaskGraph::keeps
  std::size_t hold = 0;      ///< index into the problem's holds
  std::size_t choice = 0;    ///< index into the load's choices
  std::vector<int> numbers;  ///< from 0; one for each place of the choice's packing
  int begin = 0;             ///< step along the place; 0 where whole places are held
  solver::Time from = 0, until = 0;
};

/// A load stays where it was when it can. Nothing when they come to lie so that one finds no room: the schedule's own stretches do.
[[nodiscard]] std::optional<std::vector<Berth>> berths(Metres gap, const Loads&, const TaskGraph&, const Model&, const solver::Schedule&);
[[nodiscard]] std::vector<Berth> berths_as_laid_out(Metres gap, const Loads&, const TaskGraph&, const Model&, const solver::Schedule&);

}  // namespace coatday::planner
