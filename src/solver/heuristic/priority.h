#pragma once
// Which activity goes first.

#include <cstdint>
#include <random>

#include "solver/base/bounds.h"

namespace coatday::solver {

using Keys = std::vector<double>;

/// The latest starts that would still meet the due times (goals without one: the earliest time by which all goals could be reached), by
/// minimum lags alone. The smaller, the more urgent; they may lie before the earliest starts.
[[nodiscard]] Keys urgency(const Network&, const Bounds&);

/// By activity, the number of its job: all that hangs together by lags and holds. The job with the most urgent activity is number 0.
[[nodiscard]] std::vector<int> jobs(const Network&, const Keys& urgency);

/// Lowers keys so that none is above that of a successor.
void follow_precedence(const Network&, Keys&);

/// The same numbers everywhere: the standard's distributions differ between libraries, its engines do not.
class Random {
 public:
  explicit Random(std::uint64_t seed) : engine_(seed) {}
  [[nodiscard]] double unit() { return static_cast<double>(engine_() >> 11U) * 0x1.0p-53; }  ///< in [0, 1)
  [[nodiscard]] std::size_t below(std::size_t count) { return static_cast<std::size_t>(unit() * static_cast<double>(count)); }
  [[nodiscard]] bool chance(double p) { return unit() < p; }

 private:
  std::mt19937_64 engine_;
};

}  // namespace coatday::solver
