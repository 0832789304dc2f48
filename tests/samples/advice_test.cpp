// What a plan of a sample advises is ready no later than it says, where the same keys are set by what-if.

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>

#include <nlohmann/json.hpp>

#include "cli/run.h"
#include "quantity/text.h"
#include "quantity/time.h"
#include "tests/support/source_dir.h"

namespace coatday {
namespace {

namespace fs = std::filesystem;
using Json = nlohmann::json;
using Words = std::vector<std::string>;

const fs::path root = source_dir();

cli::Outcome run(const Words& words) {
  cli::Environment environment;
  environment.read = [](const fs::path& path) { return input::read_from_disk()(root / path); };
  environment.schedules = root / "schedules";
  return cli::run(words, environment);
}

/// The orders of each sample that are planned by themselves.
std::vector<std::string> orders() {
  std::vector<std::string> files;
  for (const auto& sample : fs::directory_iterator(root / "samples")) {
    const fs::path order = sample.path() / "order.yaml";
    if (fs::exists(order)) files.push_back(fs::relative(order, root).string());
  }
  std::sort(files.begin(), files.end());
  return files;
}

Instant instant(const Json& text) { return *parse_iso8601(text.get<std::string>()); }

class Advised : public testing::TestWithParam<std::string> {};

TEST_P(Advised, IsReadyNoLaterThanItSays) {
  const cli::Outcome outcome = run({"plan", GetParam(), "--format", "json"});
  if (outcome.out.empty()) GTEST_SKIP() << outcome.err;
  const Json plan = Json::parse(outcome.out);
  Json all = plan["advice"]["suggestions"];
  for (const Json& help : plan["result"].value("proposals", Json::array())) all.push_back(help);
  for (const Json& help : all) {
    if (help["set"].empty()) continue;
    Words words{"what-if", GetParam(), "--format", "json"};
    for (const std::string set : help["set"]) words.insert(words.end(), {"--set", set});
    const cli::Outcome with = run(words);
    ASSERT_EQ(with.status, cli::done) << help.dump() << with.err;
    EXPECT_LE(instant(Json::parse(with.out)["after"]["result"]["ready_safe"]), instant(help["ready_safe"])) << help.dump();
  }
}

INSTANTIATE_TEST_SUITE_P(Samples, Advised, testing::ValuesIn(orders()), [](const auto& instance) {
  std::string name = fs::path(instance.param).parent_path().filename().string();
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
});

}  // namespace
}  // namespace coatday
