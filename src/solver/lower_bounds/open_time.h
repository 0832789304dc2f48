#pragma once
// How much time some activities have to run in.

#include <cstdint>
#include <vector>

#include "solver/base/problem.h"

namespace coatday::solver {

/// The times in which any of some activities may run, with running totals.
class OpenTime {
 public:
  explicit OpenTime(Intervals);
  [[nodiscard]] std::int64_t between(Time begin, Time end) const { return begin < end ? until(end) - until(begin) : 0; }

 private:
  [[nodiscard]] std::int64_t until(Time) const;

  Intervals intervals_;
  std::vector<std::int64_t> before_;
};

}  // namespace coatday::solver
