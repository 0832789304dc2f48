// How long files and functions may be, and that each .cpp has a header of its own.

#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>

#include "tests/house/house.h"

namespace coatday::house {
namespace {

constexpr std::size_t longest_file = 400, longest_function = 40;

/// Rows of values, which no reader reads from top to bottom.
bool is_table(const std::filesystem::path& file) {
  const std::string name = file.stem().string();
  return name.ends_with("_table") || name.ends_with("_keys") || name == "species" || name == "solvent";
}

/// One header declares what a family of files defines, all of one form.
bool is_of_a_family(const std::filesystem::path& file) {
  static const std::set<std::string> families = {"cli", "checker"};  // cli/commands.h, checker/checks.h
  return families.count(file.parent_path().string()) > 0;
}

/// Opened less closed braces of a line, those in quotes left out.
int braces(const std::string& line) {
  int depth = 0;
  char quote = 0;
  for (std::size_t i = 0; i < line.size(); ++i) {
    const char c = line[i];
    if (quote != 0) {
      if (c == '\\') ++i;
      if (c == quote) quote = 0;
    } else if (c == '/' && line.compare(i, 2, "//") == 0) {
      break;
    } else if (c == '"' || (c == '\'' && (i == 0 || std::isdigit(static_cast<unsigned char>(line[i - 1])) == 0))) {
      quote = c;
    } else {
      depth += c == '{' ? 1 : c == '}' ? -1 : 0;
    }
  }
  return depth;
}

/// The lines of function bodies, as {first line, length}. clang-format settles how a function opens.
std::vector<std::pair<std::size_t, std::size_t>> functions(const std::vector<std::string>& lines) {
  std::vector<std::pair<std::size_t, std::size_t>> found;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const std::string& line = lines[i];
    const bool opens = line.ends_with(") {") || line.ends_with("const {") || line.ends_with("override {") || line.ends_with("noexcept {");
    if (!opens) continue;
    int depth = 1;
    std::size_t end = i;
    while (depth > 0 && ++end < lines.size()) depth += braces(lines[end]);
    found.emplace_back(i, end - i - 1);
  }
  return found;
}

TEST(House, FilesAndFunctionsAreShort) {
  int seen = 0;
  for (const Source& source : sources()) {
    if (is_table(source.file)) continue;
    EXPECT_LE(source.lines.size(), longest_file) << source.file;
    for (const auto& [line, length] : functions(source.lines)) {
      ++seen;
      EXPECT_LE(length, longest_function) << source.file << ":" << line + 1;
    }
  }
  EXPECT_GT(seen, 1000);
}

TEST(House, EverySourceHasItsHeader) {
  const std::vector<Source> all = sources();
  std::set<std::string> files;
  for (const Source& source : all) files.insert(source.file.string());
  for (const Source& source : all) {
    if (source.file.extension() != ".cpp" || source.file.stem() == "main" || is_table(source.file) || is_of_a_family(source.file)) continue;
    std::filesystem::path header = source.file;
    EXPECT_TRUE(files.count(header.replace_extension(".h").string())) << source.file << " has no header of its own";
  }
}

}  // namespace
}  // namespace coatday::house
