// A planner with a fault is put in the place of the real one: no command shows its plan. And what is read is read once.
#include <gtest/gtest.h>

#include <map>
#include <memory>
#include <set>

#include "cli/commands.h"
#include "cli/run.h"
#include "tests/cli/typed.h"

namespace coatday::cli {
namespace {

const Files files{{"order.yaml", R"(order: shelf
shop: shop.yaml
start: 2027-01-11 08:00
pieces:
  - piece: shelf
    species: walnut-black
    schedule: water-clear-three-coats
    parts:
      - {part: board, shape: board, length: 900 mm, width: 250 mm, thickness: 20 mm}
)"},
                  {"shop.yaml", R"(shop: sample shop
time zone: America/Chicago
hours: {mon-fri: "08:00-12:00, 13:00-17:00"}
methods: [brush, pad, wipe]
drying places:
  - {name: trestle, kind: points, count: 4}
air:
  constant: {temperature: 20 °C, humidity: 45 %}
currency: EUR
rates: {hour: 50}
)"}};

/// Plans soundly, then finds a breach in the plan.
Environment with_a_fault() {
  Environment environment = typed(files);
  environment.finish_plan = [](const job::Job& job, const job::Request& request) -> tl::expected<planner::FinishedPlan, planner::Faults> {
    EXPECT_TRUE(planner::finish_plan(job, request));
    return tl::make_unexpected(planner::Faults{{{"too-early", "clear 2 goes on before clear 1 is dry"}}});
  };
  return environment;
}

/// Each command line that plans, in each format, to the stream and to a file.
std::vector<Args> lines_that_plan() {
  std::vector<Args> lines;
  for (const Command& command : commands()) {
    if (command.needs < Needs::plan) continue;
    for (const Output& output : command.outputs) {
      Args line{std::string(command.name), "order.yaml"};
      if (command.outputs.size() > 1) line.insert(line.end(), {"--format", std::string(output.format)});
      if (command.name != "page") lines.push_back(line);
      line.insert(line.end(), {"-o", testing::TempDir() + "coatday-fault"});
      if (command.announcement != nullptr) lines.push_back(line);
    }
  }
  lines.push_back({"what-if", "order.yaml", "--set", "people=2"});
  lines.push_back({"why", "order.yaml", "shelf/board/clear-1"});
  return lines;
}

std::string text_of(const Args& line) {
  std::string text;
  for (const std::string& word : line) text += word + " ";
  return text;
}

TEST(Faults, NoCommandShowsAPlanThatTheCheckerRefuses) {
  std::set<std::string> seen;
  for (const Args& line : lines_that_plan()) {
    const Outcome outcome = run(line, with_a_fault());
    seen.insert(line.front());
    EXPECT_EQ(outcome.status, our_fault) << text_of(line);
    EXPECT_EQ(outcome.out, "") << text_of(line);
    EXPECT_FALSE(outcome.file) << text_of(line);
    EXPECT_NE(outcome.err.find("bug in coatday"), std::string::npos) << text_of(line) << outcome.err;
    EXPECT_NE(outcome.err.find("too-early: clear 2 goes on before clear 1 is dry"), std::string::npos) << text_of(line) << outcome.err;
  }
  EXPECT_EQ(seen, (std::set<std::string>{"plan", "page", "quote", "calendar", "sheet", "card", "buy", "why", "what-if", "wood"}));
}

/// How often each file is read.
using Reads = std::map<std::string, int>;
Reads reads_of(const Args& line, Files more = {}) {
  more.insert(files.begin(), files.end());
  Environment environment = typed(more);
  const auto counts = std::make_shared<Reads>();
  environment.read = [read = environment.read, counts](const std::filesystem::path& path) {
    ++(*counts)[path.filename().string()];
    return read(path);
  };
  const Outcome outcome = run(line, environment);
  EXPECT_LE(outcome.status, no_plan) << text_of(line) << outcome.err;
  return *counts;
}

TEST(Files, AreReadOnce) {
  std::vector<Args> lines = lines_that_plan();
  lines.pop_back();
  lines.insert(lines.end(), {{"check", "order.yaml"},
                             {"area", "order.yaml"},
                             {"air", "shop.yaml"},
                             {"air", "shop.yaml", "order.yaml", "--set", "air.constant.temperature=21 °C"},
                             {"finishes"},
                             {"schedules"}});
  for (const Args& line : lines) {
    for (const auto& [file, count] : reads_of(line)) EXPECT_EQ(count, 1) << text_of(line) << file;
  }
  const std::string earlier = run({"plan", "order.yaml", "--format", "json"}, typed(files)).out;
  for (const auto& [file, count] : reads_of({"plan", "order.yaml", "--keep", "old.json"}, {{"old.json", earlier}}))
    EXPECT_EQ(count, 1) << file;
}

}  // namespace
}  // namespace coatday::cli
