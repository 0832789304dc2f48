#pragma once
// Which steps of a schedule reach which face.

#include <vector>

#include "planner/tasks/loads.h"

namespace coatday::planner {

struct CoatOnFace {
  const finish::Step* step = nullptr;
  const finish::Product* product = nullptr;
};

/// Does a step with this product (null: dry work) reach this face, after so many film coats? A face that is masked all over gets nothing. An
/// exception of no coats leaves out colour and film; other exceptions count film alone.
[[nodiscard]] bool reaches(const finish::Step&, const finish::Product*, const job::FaceEntry&, const piece::Face&, int film_coats_so_far);

/// The wet steps that reach a face, in order.
[[nodiscard]] std::vector<CoatOnFace> coats_on(const finish::Schedule&, const finish::Catalogue&, const job::FaceEntry&,
                                               const piece::Face&);

/// Those that build a film.
[[nodiscard]] int film_coats(const std::vector<CoatOnFace>&);

}  // namespace coatday::planner
