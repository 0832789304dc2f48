#pragma once
// Project scheduling with minimum and maximum lags (RCPSP/max) as the public test sets give it: their two file formats, and the step from
// an instance to a problem for the solver.

#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

#include "solver/base/problem.h"

namespace coatday::solver::bench {

struct Arc {  ///< start(to) - start(from) >= lag
  int from = 0;
  int to = 0;
  Time lag = 0;
};

/// Activity 0 is the source and starts at 0; the last one is the sink, and its start is the makespan.
struct Instance {
  std::vector<Time> durations;
  std::vector<std::vector<int>> demands;  ///< by activity, one amount a resource
  std::vector<int> capacities;
  std::vector<Arc> arcs;
};

struct BadFile {
  int line = 0;  ///< from 1
  std::string what;
};

/// ProGen/max, single mode (.sch).
[[nodiscard]] tl::expected<Instance, BadFile> read_sch(std::string_view text);
/// ProGen, single mode (.sm): finish-to-start precedence.
[[nodiscard]] tl::expected<Instance, BadFile> read_sm(std::string_view text);

/// Calendars all time, one goal (the sink), and a horizon that some schedule meets if there is any.
[[nodiscard]] Problem problem_of(const Instance&);

}  // namespace coatday::solver::bench
