#pragma once
// Keys that say which activity goes first.

#include <cstdint>
#include <random>

#include "solver/base/bounds.h"

namespace coatday::solver {

using Keys = std::vector<double>;

/// By activity, the latest start that meets the due times by minimum lags alone. A goal without a due time takes the earliest time by which
/// all goals can be reached. A smaller key is more urgent; keys may lie before the earliest starts.
[[nodiscard]] Keys urgency(const Network&, const Bounds&);

/// By activity, the number of its job. Lags and holds tie the activities of a job together. Job 0 has the most urgent activity.
[[nodiscard]] std::vector<int> jobs(const Network&, const Keys& urgency);

/// Lowers keys so that no activity has a larger key than a successor.
void follow_precedence(const Network&, Keys&);

/// Gives the same numbers everywhere: engines are the same in all standard libraries, distributions are not.
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
