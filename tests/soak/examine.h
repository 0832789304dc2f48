#pragma once
// All that is asked of one case.

#include "tests/soak/probes.h"

namespace coatday::soak {

struct Find {
  Complaint complaint;
  Case at;      ///< the case as it was then, with its history
  Probe probe;  ///< asks again
};

/// Plans it in all ways. Randomness comes from the case's seed alone.
[[nodiscard]] std::vector<Find> examine(const Case&, Bench&);
/// Changes one of its files at random, so many times over.
/// One relation and nothing else.
[[nodiscard]] std::vector<Find> examine_relation(const Case&, Bench&, const std::string& name);
[[nodiscard]] std::vector<Find> examine_mutants(const Case&, Bench&, int mutations);
/// Adds what the case uses to the counts: keys, shapes and schedules.
void count_keys(const Case&, Counts&);

}  // namespace coatday::soak
