#pragma once
// What becomes of each face in time, as data.

#include <string>
#include <vector>

#include "job/plan.h"

namespace coatday::report::page {

/// What a face is in, from one coat to the next.
enum class State {
  work,     ///< dry work at it
  applied,  ///< a coat goes on
  wet,      ///< until it is tack-free: dust spoils it
  drying,   ///< until the next coat may go on
  open,     ///< the next coat may go on
  closed,   ///< too late without a scuff
  curing,   ///< the last coat, until full cure
};

struct Stretch {
  State state = State::work;
  Instant from, until;
  const job::Event* event = nullptr;
};

/// Faces of one part that have the same steps at the same times.
struct Row {
  std::size_t piece = 0;
  std::string part, faces;
  std::vector<Stretch> stretches;  ///< by their begin
};

/// One row or more for every part, each face in one of them.
[[nodiscard]] std::vector<Row> rows_of(const job::Plan&);
/// Work that is at no face: the shop's own, and what is done with a whole piece.
[[nodiscard]] std::vector<const job::Event*> other_work(const job::Plan&);

}  // namespace coatday::report::page
