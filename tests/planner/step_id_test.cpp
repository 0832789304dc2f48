// An id is read as what it was written for.
#include "job/step_id.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <set>

#include "input/open.h"
#include "planner/tasks/tasks.h"
#include "tests/support/source_dir.h"

namespace coatday::planner {
namespace {

namespace fs = std::filesystem;
using job::StepId;

std::vector<job::Job> samples() {
  std::vector<job::Job> jobs;
  const fs::path root = source_dir();
  for (const auto& entry : fs::recursive_directory_iterator(root / "samples")) {
    if (!entry.path().filename().string().starts_with("order") || entry.path().extension() != ".yaml") continue;
    input::Opening opened = input::open_orders({entry.path()}, root / "schedules", input::read_from_disk());
    EXPECT_TRUE(opened) << entry.path();
    if (opened) jobs.push_back(std::move(opened->job));
  }
  return jobs;
}

TEST(StepId, IsReadAsItWasWrittenForEveryTaskOfTheSamples) {
  std::set<std::pair<StepId::Kind, StepId::Pass>> seen;
  for (const job::Job& job : samples()) {
    for (const Batching batching : {Batching::fit, Batching::one_part, Batching::half}) {
      for (const Sides sides : {Sides::hidden_first, Sides::show_first}) {
        for (const Task& task : make_tasks(job, make_loads(job, batching), {}, sides).tasks) {
          EXPECT_EQ(job::to_string(task.step_id), task.id);
          EXPECT_EQ(job::parse_step_id(task.id), task.step_id) << task.id;
          seen.insert({task.step_id.kind, task.step_id.pass});
        }
      }
    }
  }
  EXPECT_GE(seen.size(), 8U);  // all passes of steps, turns both ways, other work, at the least
}

TEST(StepId, KindsAndPasses) {
  using Kind = StepId::Kind;
  using Pass = StepId::Pass;
  EXPECT_EQ(job::parse_step_id("table/top/clear-1"), (StepId{"table", "top", "clear-1", Pass::only, Kind::step}));
  EXPECT_EQ(job::parse_step_id("table/leg-1.half/clear-1/show"), (StepId{"table", "leg-1.half", "clear-1", Pass::show, Kind::step}));
  EXPECT_EQ(job::parse_step_id("table/top/clear-2/turn-back"), (StepId{"table", "top", "clear-2", Pass::only, Kind::turn_back}));
  EXPECT_EQ(job::parse_step_id("table/top/carry-in"), (StepId{"table", "top", "", Pass::only, Kind::carry_in}));
  EXPECT_EQ(job::parse_step_id("table/top/measure"), (StepId{"table", "top", "", Pass::only, Kind::measure}));
  EXPECT_EQ(job::parse_step_id("table/glue-up"), (StepId{"table", "", "glue-up", Pass::only, Kind::other_work}));
  EXPECT_EQ(job::parse_step_id("shop/mill"), (StepId{"", "", "mill", Pass::only, Kind::other_work}));
  EXPECT_EQ(job::parse_step_id("cans/clear"), (StepId{"", "", "clear", Pass::only, Kind::carry_in}));
  for (const char* no_id : {"", "table", "/", "table/", "table//sand", "table/top/sand/third", "a/b/c/first/turn"})
    EXPECT_FALSE(job::parse_step_id(no_id)) << no_id;
}

TEST(StepId, NamesItsLoadAndItsScuff) {
  EXPECT_EQ(job::load_key(*job::parse_step_id("table/top/clear-1/first")), "table/top");
  EXPECT_EQ(job::load_key(*job::parse_step_id("table/glue-up")), "");
  EXPECT_EQ(job::coat_after(job::scuff_before("clear-2")), "clear-2");
  EXPECT_EQ(job::coat_after("clear-2"), std::nullopt);
  EXPECT_EQ(job::coat_after("-scuff"), std::nullopt);
}

}  // namespace
}  // namespace coatday::planner
