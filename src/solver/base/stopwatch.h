#pragma once
// How long a call has taken.

#include <chrono>
#include <ctime>

namespace coatday::solver {

/// What seconds mean: time on the wall, or time that the thread spends on a processor. The load of other programs does not shorten the
/// second.
enum class Clock { wall, processor };

class Stopwatch {
 public:
  explicit Stopwatch(Clock clock) : clock_(clock), begin_(now(clock)) {}
  [[nodiscard]] double seconds() const { return now(clock_) - begin_; }

 private:
  static double now(Clock clock) {
    if (clock == Clock::wall) return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
    timespec spent{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &spent);
    return static_cast<double>(spent.tv_sec) + 1e-9 * static_cast<double>(spent.tv_nsec);
  }

  Clock clock_;
  double begin_;
};

}  // namespace coatday::solver
