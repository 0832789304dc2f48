#pragma once
// What is left of a call's limits.

#include <algorithm>
#include <utility>

#include "solver/base/result.h"

namespace coatday::solver {

class Budget {
 public:
  explicit Budget(const Limits& limits) : limits_(limits), stopwatch_(limits.clock), guard_(Clock::processor) { share(1); }

  /// Whether the call may do more than its quick passes.
  [[nodiscard]] bool extended() const { return limits_.seconds > 0 || limits_.work > 0; }
  void count(long work = 1) { work_ += work; }
  [[nodiscard]] long work() const { return work_; }
  [[nodiscard]] bool spent() const { return (limits_.work > 0 && work_ >= limits_.work) || cut_off(); }
  /// Whether the clock or the caller ends the call now.
  [[nodiscard]] bool cut_off() const { return stopped() || (limits_.seconds > 0 && stopwatch_.has_run(limits_.seconds)) || guarded(); }
  [[nodiscard]] bool guarded() const { return limits_.guard > 0 && guard_.has_run(limits_.guard); }
  [[nodiscard]] bool stopped() const { return limits_.stop != nullptr && limits_.stop->load(std::memory_order_relaxed); }
  /// Sets aside such a part of the rest. share_spent() says when it is used up.
  void share(double part) {
    if (limits_.work > 0) share_work_ = work_ + static_cast<long>(part * static_cast<double>(limits_.work - work_));
    if (limits_.seconds > 0) share_seconds_ = seconds() + part * (limits_.seconds - seconds());
  }
  /// The same, but at most such a part of what is used up already.
  void share(double part, double of_spent) {
    share(part);
    share_work_ = std::min(share_work_, work_ + static_cast<long>(of_spent * static_cast<double>(work_)));
    share_seconds_ = std::min(share_seconds_, seconds() * (1 + of_spent));
  }
  [[nodiscard]] bool share_spent() const {
    return spent() || (limits_.work > 0 && work_ >= share_work_) || (limits_.seconds > 0 && seconds() >= share_seconds_);
  }
  [[nodiscard]] double seconds() const { return stopwatch_.seconds(); }
  /// What a search that looks at one clock may take of it.
  [[nodiscard]] std::pair<double, Clock> rest() const {
    constexpr double at_least = 1e-3;  // 0 would be no limit
    if (limits_.seconds > 0) return {std::max(at_least, limits_.seconds - seconds()), limits_.clock};
    if (limits_.guard > 0) return {std::max(at_least, limits_.guard - guard_.seconds()), Clock::processor};
    return {0, limits_.clock};
  }
  [[nodiscard]] const Limits& limits() const { return limits_; }

 private:
  const Limits& limits_;
  Stopwatch stopwatch_, guard_;
  long work_ = 0;
  long share_work_ = 0;
  double share_seconds_ = 0;
};

}  // namespace coatday::solver
