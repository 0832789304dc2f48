// How long the documents may be.

#include <gtest/gtest.h>

#include <sstream>

#include "tests/house/house.h"

namespace coatday::house {
namespace {

std::size_t words_in(const std::filesystem::path& file) {
  std::size_t count = 0;
  for (const std::string& line : lines_of(file)) {
    std::istringstream in(line);
    for (std::string word; in >> word;) ++count;
  }
  return count;
}

/// Words outside of tables and of blocks of code.
std::size_t prose_in(const std::filesystem::path& file) {
  std::size_t count = 0;
  bool code = false;
  for (const std::string& line : lines_of(file)) {
    if (line.starts_with("```")) code = !code;
    if (code || line.starts_with("|") || line.starts_with("    ")) continue;
    std::istringstream in(line);
    for (std::string word; in >> word;) ++count;
  }
  return count;
}

TEST(Documents, AreShort) {
  EXPECT_LE(words_in(root() / "README.md"), 900U);
  EXPECT_LE(words_in(root() / "DEVELOPERS.md"), 1500U);
  for (const char* room : {"solver", "wood", "planner", "report", "finish", "input"}) {
    const std::size_t words = prose_in(root() / "src" / room / "README.md");
    EXPECT_LE(words, 700U) << room;
    EXPECT_GE(words, 200U) << room;
  }
}

TEST(Documents, BeginWithTheJob) {
  const std::vector<std::string> readme = lines_of(root() / "README.md");
  ASSERT_GT(readme.size(), 3U);
  EXPECT_EQ(readme[0], "# coatday");
  EXPECT_TRUE(readme[2].starts_with("coatday plans the finishing of furniture.")) << readme[2];
}

}  // namespace
}  // namespace coatday::house
