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
  /// Whether it has run so long; may be asked very often. To ask the processor's clock is slow, but no thread spends more on a processor than
  /// passes on the wall: it is asked again only when enough has passed there.
  [[nodiscard]] bool has_run(double limit) const {
    if (clock_ == Clock::wall) return seconds() >= limit;
    const double wall = now(Clock::wall);
    if (wall < ask_again_ && limit >= asked_for_) return false;
    const double left = limit - seconds();
    ask_again_ = wall + left;
    asked_for_ = limit;
    return left <= 0;
  }

 private:
  static double now(Clock clock) {
    if (clock == Clock::wall) return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
    timespec spent{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &spent);
    return static_cast<double>(spent.tv_sec) + 1e-9 * static_cast<double>(spent.tv_nsec);
  }

  Clock clock_;
  double begin_;
  mutable double ask_again_ = 0, asked_for_ = 0;
};

}  // namespace coatday::solver
