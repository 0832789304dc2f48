// Words that are gone stay gone, in all that people read: string literals, help, reports, documents.

#include <gtest/gtest.h>

#include <regex>

#include "tests/house/house.h"

namespace coatday::house {
namespace {

namespace fs = std::filesystem;

struct Word {
  std::regex pattern;
  std::string gone, instead;
};

std::vector<Word> words() {
  std::vector<Word> found;
  for (const std::string& line : lines_of(root() / "tests/house/words.txt")) {
    const std::size_t arrow = line.find(" -> ");
    if (line.starts_with('#') || arrow == std::string::npos) continue;
    const std::string pattern = line.substr(0, arrow);
    found.push_back({std::regex(pattern, std::regex::icase), pattern, line.substr(arrow + 4)});
  }
  return found;
}

std::regex any_of(const std::vector<Word>& words) {
  std::string all;
  for (const Word& word : words) all += (all.empty() ? "" : "|") + word.gone;
  return std::regex(all, std::regex::icase);
}

struct Text {
  std::string where, text;
};

/// The string literals of a line; two that follow each other count as one.
std::string literals_of(const std::string& line) {
  static const std::regex literal(R"re("((?:\\.|[^"\\])*)")re");
  std::string text;
  if (line.starts_with("#include")) return text;
  for (std::sregex_iterator at(line.begin(), line.end(), literal), end; at != end; ++at) text += (*at)[1].str();
  return text;
}

std::string without_comment(const std::string& line) {
  const std::size_t comment = line.find("// ");
  return line.substr(0, line.find("/// ") < comment ? line.find("/// ") : comment);
}

/// A sentence may be broken over lines: each stands with the one that follows.
void add_lines(std::vector<Text>& texts, const fs::path& file, const std::vector<std::string>& lines) {
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const std::string next = i + 1 < lines.size() ? lines[i + 1] : "";
    texts.push_back({fs::relative(file, root()).string() + ":" + std::to_string(i + 1),
                     lines[i] + " " + next.substr(0, next.find(' ', next.find_first_not_of(' ')))});
  }
}

std::vector<Text> texts() {
  std::vector<Text> found;
  for (const Source& source : sources()) {
    if (source.file.begin()->string() == "solver") continue;  // mathematics, in the words of the literature
    std::vector<std::string> lines;
    for (const std::string& line : source.lines) lines.push_back(literals_of(without_comment(line)));
    add_lines(found, root() / "src" / source.file, lines);
  }
  const auto add_folder = [&found](const char* folder, const std::set<std::string>& endings) {
    for (const auto& entry : fs::recursive_directory_iterator(root() / folder)) {
      const bool read = endings.count(entry.path().extension().string()) > 0 && entry.path().parent_path().filename() != "solver";
      if (read) add_lines(found, entry.path(), lines_of(entry.path()));
    }
  };
  add_folder("src", {".md", ".txt", ".js"});
  add_folder("samples", {".txt", ".yaml"});
  add_folder("schedules", {".yaml"});
  add_folder("tests/report", {".txt"});
  add_folder("tests/cli", {".txt"});
  add_folder("tests/input/errors", {".txt"});
  for (const char* file : {"README.md", "DEVELOPERS.md"}) add_lines(found, root() / file, lines_of(root() / file));
  return found;
}

TEST(Words, ThatAreGoneStayGone) {
  const std::vector<Word> gone = words();
  ASSERT_GT(gone.size(), 10U);
  const std::vector<Text> all = texts();
  ASSERT_GT(all.size(), 10000U);
  const std::regex any = any_of(gone);  // one search is quicker than one for each word
  for (const Text& text : all) {
    if (!std::regex_search(text.text, any)) continue;
    for (const Word& word : gone) {
      std::smatch match;
      if (!std::regex_search(text.text, match, word.pattern)) continue;
      ADD_FAILURE() << text.where << ": \"" << match.str() << "\"; write: " << word.instead << "\n  " << text.text;
    }
  }
}

/// The search itself finds what it is for.
TEST(Words, AreFoundInLiterals) {
  EXPECT_EQ(literals_of(R"(say("by the late ", "side");)"), "by the late side");
  EXPECT_EQ(literals_of("#include \"told.h\""), "");
  EXPECT_EQ(without_comment("int a;  // told"), "int a;  ");
}

}  // namespace
}  // namespace coatday::house
