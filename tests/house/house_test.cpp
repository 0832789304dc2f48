// The arrows of the house: no room includes from a room above it, and input/ sees of plan/ its job alone.

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <string>

#include "tests/support/source_dir.h"

namespace {

namespace fs = std::filesystem;
using coatday::source_dir;

const std::map<std::string, std::set<std::string>>& arrows() {
  static const std::map<std::string, std::set<std::string>> allowed = {
      {"quantity", {}},
      {"solver", {}},
      {"climate", {"quantity"}},
      {"wood", {"quantity", "climate"}},
      {"finish", {"quantity", "climate"}},
      {"piece", {"quantity", "climate", "wood"}},
      {"shop", {"quantity", "climate"}},
      {"plan", {"quantity", "solver", "climate", "wood", "finish", "piece", "shop"}},
      {"input", {"quantity", "climate", "wood", "finish", "piece", "shop", "plan/job.h"}},
      {"report", {"quantity", "climate", "wood", "finish", "piece", "shop", "plan"}},
      {"cli", {"quantity", "climate", "wood", "finish", "piece", "shop", "plan", "input", "report"}},
  };
  return allowed;
}

std::vector<std::string> includes_of(const fs::path& file) {
  static const std::regex include("^#include \"([^\"]+)\"");
  std::vector<std::string> found;
  std::ifstream in(file);
  for (std::string line; std::getline(in, line);) {
    std::smatch match;
    if (std::regex_search(line, match, include)) found.push_back(match[1]);
  }
  return found;
}

TEST(House, ArrowsPointDown) {
  int seen = 0;
  for (const auto& entry : fs::recursive_directory_iterator(fs::path(source_dir()) / "src")) {
    const std::string extension = entry.path().extension().string();
    if (extension != ".h" && extension != ".cpp") continue;
    const fs::path relative = fs::relative(entry.path(), fs::path(source_dir()) / "src");
    const std::string room = relative.begin()->string();
    ASSERT_TRUE(arrows().count(room)) << "a room that the house does not know: " << room;
    for (const std::string& include : includes_of(entry.path())) {
      const std::string from = include.substr(0, include.find('/'));
      ++seen;
      EXPECT_TRUE(from == room || arrows().at(room).count(from) || arrows().at(room).count(include))
          << relative.string() << " includes " << include;
    }
  }
  EXPECT_GT(seen, 100);
}

/// The checker judges the planner, so it may not lean on it: of plan/ it sees its own files, the plan and the job.
TEST(House, TheCheckerSeesNoPlanner) {
  const fs::path checker = fs::path(source_dir()) / "src" / "plan" / "check";
  for (const auto& entry : fs::directory_iterator(checker)) {
    for (const std::string& include : includes_of(entry.path())) {
      if (include.rfind("plan/", 0) != 0) continue;
      const bool own = include.rfind("plan/check/", 0) == 0;
      EXPECT_TRUE(own || include == "plan/plan.h" || include == "plan/job.h" || include == "plan/check.h")
          << entry.path().filename().string() << " includes " << include;
    }
  }
}

}  // namespace
