#include "solver/base/monotone_function.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace coatday::solver {
namespace {

// Leaves latest() to the base class.
class Bisected final : public MonotoneFunction {
 public:
  explicit Bisected(Function f) : f_(std::move(f)) {}
  [[nodiscard]] Time at(Time t) const override { return f_->at(t); }

 private:
  Function f_;
};

Time scanned(const MonotoneFunction& f, Time value, Time low, Time high) {
  Time latest = low - 1;
  for (Time t = low; t <= high; ++t) {
    if (f.at(t) <= value) latest = t;
  }
  return latest;
}

Function any_function(int depth) {
  switch (*rc::gen::inRange(0, depth > 0 ? 4 : 2)) {
    case 0:
      return shift(*rc::gen::inRange(-5, 6));
    case 1: {
      auto values = *rc::gen::container<std::vector<Time>>(rc::gen::inRange<Time>(-10, 30));
      std::sort(values.begin(), values.end());
      return table(*rc::gen::inRange(-5, 6), std::move(values));
    }
    case 2:
      return compose(any_function(depth - 1), any_function(depth - 1));
    default:
      return later_of(any_function(depth - 1), any_function(depth - 1));
  }
}

RC_GTEST_PROP(MonotoneFunction, LatestAgreesWithALinearScan, ()) {
  const Function f = any_function(2);
  const Time value = *rc::gen::inRange(-15, 40);
  const Time low = *rc::gen::inRange(-15, 20), high = low + *rc::gen::inRange(-1, 25);
  const Time expected = scanned(*f, value, low, high);
  RC_ASSERT(f->latest(value, low, high) == expected);
  RC_ASSERT(Bisected(f).latest(value, low, high) == expected);
}

RC_GTEST_PROP(MonotoneFunction, NeverFalls, ()) {
  const Function f = any_function(2);
  for (Time t = -20; t < 40; ++t) RC_ASSERT(f->at(t) <= f->at(t + 1));
}

TEST(MonotoneFunction, TablesHoldTheirFirstValueBeforeAndEndInNever) {
  const Function f = table(10, {3, 5, 5});
  EXPECT_EQ(f->at(-100), 3);
  EXPECT_EQ(f->at(10), 3);
  EXPECT_EQ(f->at(12), 5);
  EXPECT_EQ(f->at(13), unreachable);
  EXPECT_EQ(f->latest(5, 0, 100), 12);
  EXPECT_EQ(f->latest(2, 0, 100), -1);
  EXPECT_EQ(f->latest(unreachable, 0, 100), 100);
}

TEST(MonotoneFunction, NeverStaysNever) {
  EXPECT_EQ(shift(5)->at(unreachable), unreachable);
  EXPECT_EQ(shift(-5)->at(unreachable), unreachable);
  EXPECT_EQ(shift(unreachable)->at(unreachable - 1), unreachable);
  EXPECT_EQ(compose(shift(-5), table(0, {}))->at(3), unreachable);
  EXPECT_EQ(shift(5)->latest(unreachable - 1, 0, unreachable), unreachable - 6);
}

}  // namespace
}  // namespace coatday::solver
