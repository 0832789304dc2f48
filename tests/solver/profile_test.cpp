#include "solver/base/profile.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>

namespace coatday::solver {
namespace {

constexpr Time length = 20;

// The same, slot by slot; free outside [0, length).
struct Slots {
  std::array<int, length> use{};
  [[nodiscard]] bool above(int level, Time t) const { return (t >= 0 && t < length ? use[static_cast<std::size_t>(t)] : 0) > level; }
  [[nodiscard]] std::optional<Interval> stretch(int level, Time t) const {
    Interval i{t, t};
    while (above(level, i.begin - 1)) --i.begin;
    while (above(level, i.end)) ++i.end;
    return i;
  }
  [[nodiscard]] std::optional<Interval> first_above(int level, Time begin, Time end) const {
    for (Time t = begin; t < end; ++t) {
      if (above(level, t)) return stretch(level, t);
    }
    return std::nullopt;
  }
  [[nodiscard]] std::optional<Interval> last_above(int level, Time begin, Time end) const {
    for (Time t = end - 1; t >= begin; --t) {
      if (above(level, t)) return stretch(level, t);
    }
    return std::nullopt;
  }
};

// The profile may begin the first stretch where the use last changed within it, so only what lies in [begin, end) is compared.
void same(const std::optional<Interval>& got, const std::optional<Interval>& expected, Time begin, Time end) {
  RC_ASSERT(got.has_value() == expected.has_value());
  if (!got) return;
  RC_ASSERT(std::max(got->begin, begin) == std::max(expected->begin, begin));
  RC_ASSERT(std::min(got->end, end) == std::min(expected->end, end));
}

RC_GTEST_PROP(Profile, AgreesWithSlots, ()) {
  Profile profile;
  Slots slots;
  std::vector<std::pair<Interval, int>> added;
  for (int i = *rc::gen::inRange(0, 12); i > 0; --i) {
    const bool back = !added.empty() && *rc::gen::arbitrary<bool>();
    const Time begin = *rc::gen::inRange(0, length), end = *rc::gen::inRange(begin, length + 1);
    std::pair<Interval, int> change{{begin, end}, *rc::gen::inRange(1, 4)};
    if (back) {
      change = added.back();
      change.second = -change.second;
      added.pop_back();
    } else {
      added.push_back(change);
    }
    profile.add(change.first.begin, change.first.end, change.second);
    for (Time t = change.first.begin; t < change.first.end; ++t) slots.use[static_cast<std::size_t>(t)] += change.second;
  }
  const Time begin = *rc::gen::inRange(-2, length + 2), end = *rc::gen::inRange(begin, length + 3);
  const int level = *rc::gen::inRange(0, 5);
  same(profile.first_above(level, begin, end), slots.first_above(level, begin, end), begin, end);
  same(profile.last_above(level, begin, end), slots.last_above(level, begin, end), begin, end);
}

TEST(Profile, UseForEver) {
  Profile profile;
  profile.add(5, unreachable, 1);
  const auto blocked = profile.last_above(0, 0, 100);
  ASSERT_TRUE(blocked);
  EXPECT_EQ(blocked->begin, 5);
  EXPECT_EQ(blocked->end, unreachable);
  EXPECT_FALSE(profile.last_above(0, 0, 5));
  EXPECT_FALSE(profile.first_above(1, 0, unreachable));
}

}  // namespace
}  // namespace coatday::solver
