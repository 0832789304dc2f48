// Every key of the plan's JSON is explained in one place.

#include <gtest/gtest.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>
#include <sstream>

#include "cli/run.h"
#include "tests/support/source_dir.h"

namespace coatday {
namespace {

namespace fs = std::filesystem;

/// Under these the keys are names that somebody gave, or finishes and time constants.
const std::set<std::string> named_by_others{"finishes", "surfaces"};

void collect(const nlohmann::json& value, bool names, std::set<std::string>& keys) {
  if (value.is_array()) {
    for (const auto& element : value) collect(element, false, keys);
  } else if (value.is_object()) {
    for (const auto& [key, element] : value.items()) {
      if (!names) keys.insert(key);
      collect(element, !names && named_by_others.count(key) > 0 && element.is_object(), keys);
    }
  }
}

std::set<std::string> words_in_code(const std::string& text) {
  static const std::regex code("`([^`]+)`");
  std::set<std::string> words;
  for (std::sregex_iterator at(text.begin(), text.end(), code), end; at != end; ++at) words.insert((*at)[1]);
  return words;
}

TEST(JsonKeys, AreExplainedInOnePlace) {
  std::ostringstream readme;
  readme << std::ifstream(fs::path(source_dir()) / "src/report/files/README.md").rdbuf();
  const std::set<std::string> explained = words_in_code(readme.str());
  std::set<std::string> keys;
  for (const char* sample : {"library-table", "every-key", "small-fan", "bowls-and-boards", "damp-july"}) {
    cli::Environment environment;
    environment.read = [](const fs::path& path) { return input::read_from_disk()(fs::path(source_dir()) / path); };
    environment.schedules = fs::path(source_dir()) / "schedules";
    const std::string order = std::string("samples/") + sample + "/order.yaml";
    collect(nlohmann::json::parse(cli::run({"plan", order, "--format", "json"}, environment).out), false, keys);
  }
  EXPECT_GT(keys.size(), 80U);
  for (const std::string& key : keys) EXPECT_TRUE(explained.count(key)) << key;
}

}  // namespace
}  // namespace coatday
