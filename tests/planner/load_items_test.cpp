// What a load's id says of its items.
#include <gtest/gtest.h>

#include "job/load_items.h"
#include "job/step_id.h"

namespace coatday::job {
namespace {

TEST(LoadItems, AreReadAsTheyAreWritten) {
  const LoadItems items{{"top", 1, 1}, {"leg", 1, 4}, {"rail", 3, 3}};
  EXPECT_EQ(load_id(items, {true, false, false}), "top+leg.1-4+rail.3");
  EXPECT_EQ(items_of("top+leg.1-4+rail.3"), items);
  EXPECT_EQ(items_of("leg"), (LoadItems{{"leg", 1, 1}})) << "a part's only item";
}

TEST(LoadItems, AreNoneInATextThatIsNoId) {
  for (const char* text :
       {"", "+", "top+", ".1", "leg.", "leg.0", "leg.0-4", "leg.4-1", "leg.1-", "leg.a", "leg.1-4x", "leg.99999999999"}) {
    EXPECT_TRUE(items_of(text).empty()) << text;
  }
}

TEST(LoadItems, LieWithinAnotherLoadOrNot) {
  const LoadItems all = items_of("top+leg.1-4");
  for (const char* some : {"top", "leg.2", "leg.1-4", "leg.3-4+top"}) EXPECT_TRUE(within(items_of(some), all)) << some;
  for (const char* other : {"leg.5", "leg.4-5", "rail", "top+rail", "top.2"}) EXPECT_FALSE(within(items_of(other), all)) << other;
  EXPECT_FALSE(within({}, all)) << "nothing is no load";
}

TEST(LoadItems, AStepIsAskedForByAnyOfItsItems) {
  const StepId event = *parse_step_id("table/top+leg.1-4/clear-1/first");
  EXPECT_TRUE(is_about(event, "table/top+leg.1-4/clear-1/first"));
  EXPECT_TRUE(is_about(event, "table/top/clear-1/first"));
  EXPECT_TRUE(is_about(event, "table/leg.2/clear-1/first"));
  for (const char* other : {"table/rail/clear-1/first", "chair/top/clear-1/first", "table/top/clear-2/first", "table/top/clear-1/second",
                            "table/top/clear-1", "table/top", "nonsense"}) {
    EXPECT_FALSE(is_about(event, other)) << other;
  }
}

TEST(LoadItems, AStepKeepsItsFirstItemWhenItsLoadChanges) {
  EXPECT_EQ(by_first_item("table/leg/sand"), by_first_item("table/leg.1-4/sand"));
  EXPECT_EQ(by_first_item("table/leg.1-4/sand"), by_first_item("table/leg.1-2+rail/sand"));
  EXPECT_NE(by_first_item("table/leg.1-4/sand"), by_first_item("table/leg.2-4/sand"));
  EXPECT_EQ(by_first_item("table/glue-up"), "table/glue-up");
}

}  // namespace
}  // namespace coatday::job
