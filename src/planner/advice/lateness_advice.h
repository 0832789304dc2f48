#pragma once
// What would help when nothing fits, or when the promise cannot be kept. It is found by planning anew.

#include "job/plan.h"
#include "job/request.h"

namespace coatday::planner {

struct LatenessAdvice {
  std::vector<job::Proposal> proposals;
  bool cut_off = false;  ///< some changes would have taken too long to plan
};

/// Changes with which the whole order is in time: the smallest of each kind, and first the kind that asks least of the maker (a scuff, another
/// support, other work that need not wait so long or be over so soon, warmer nights, warmer or drier air, more places or people, hands for two
/// hours, a day more a week, a later start, a later date). Work that no shift is long enough for rests before anything else is tried. Where no single change is enough it gives pairs, and where no pair is enough, what helps by a day. The checker finds every tried plan sound,
/// and what keys of the files can say is planned once more from them. None for a plan that is in time, for a job that validate() refuses, or for
/// an order too large to be planned again and again.
[[nodiscard]] LatenessAdvice advise_when_late(const job::Job&, const job::Request&, const job::Plan&);

}  // namespace coatday::planner
