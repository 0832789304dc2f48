#pragma once
// One way to break the small plan, and the codes of the breaches that the checker then finds.

#include <gtest/gtest.h>

#include <functional>
#include <ostream>
#include <set>
#include <string>

#include "tests/checker/small_plan.h"

namespace coatday::checker::test {

using Codes = std::set<std::string>;

struct Break {
  std::string name;
  std::function<void(Small&)> mutate;
  Codes codes;
};
void PrintTo(const Break&, std::ostream*);

class Broken : public testing::TestWithParam<Break> {};
[[nodiscard]] std::string name_of(const testing::TestParamInfo<Break>&);

/// The place that this event's load holds.
[[nodiscard]] job::PlaceUse& place_of(Small&, std::string_view event);
/// What the event's load lay on is left then, and it stands aside until its next step, the assembly.
void stand_aside(Small&, std::string_view event, Instant from);
/// The underside of the top is scuffed before its second coat.
void scuff_underside(Small&);
/// The event is done, and the history has it.
void say_done(Small&, std::string_view id);

}  // namespace coatday::checker::test
