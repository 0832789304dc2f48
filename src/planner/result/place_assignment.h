#pragma once
// Where exactly each load dries: which of a shop's equal places, which stretch of one.

#include <optional>
#include <vector>

#include "planner/model/model.h"

namespace coatday::planner {

struct PlaceAssignment {
  std::size_t place_hold = 0;  ///< index into TaskGraph::place_holds
  std::size_t hold = 0;        ///< index into the problem's holds
  std::size_t choice = 0;      ///< index into the load's choices
  std::vector<int> numbers;    ///< from 0; one for each place of the choice's packing
  int begin = 0;               ///< step along the place; 0 where whole places are held
  solver::Time from = 0, until = 0;
  std::vector<solver::Time> left;  ///< by number; where room to stand aside is short, not before somebody wants the place
};

/// Prefers the place that a load already has: nobody carries it twice. Returns nothing where a load then finds no room. `packed` is by
/// place hold, of result/set_aside.h.
[[nodiscard]] std::optional<std::vector<PlaceAssignment>> assign_places(Metres gap, const Loads&, const TaskGraph&, const Model&,
                                                                        const solver::Schedule&, const std::vector<solver::Time>& packed);
/// The places that the schedule itself found; these always exist.
[[nodiscard]] std::vector<PlaceAssignment> places_as_laid_out(Metres gap, const Loads&, const TaskGraph&, const Model&,
                                                              const solver::Schedule&, const std::vector<solver::Time>& packed);

}  // namespace coatday::planner
