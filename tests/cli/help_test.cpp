// The help: each command's, each topic's and the program's.
#include "cli/help_text.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <regex>
#include <sstream>

#include "cli/commands.h"
#include "cli/run.h"
#include "report/document/lines.h"
#include "tests/cli/typed.h"
#include "tests/report/golden.h"

namespace coatday::cli {
namespace {

Outcome answer_to(const Args& words) { return run(words, typed({})); }

TEST(Help, Golden) {
  golden::expect_golden("cli/help/coatday.txt", answer_to({"--help"}).out);
  EXPECT_EQ(answer_to({"help"}).out, answer_to({"-h"}).out);
  for (const Command& command : commands()) {
    const std::string name(command.name);
    golden::expect_golden("cli/help/" + name + ".txt", answer_to({name, "--help"}).out);
  }
}

TEST(Help, OfACommandByItsName) {
  EXPECT_EQ(answer_to({"help", "plan"}).out, answer_to({"plan", "--help"}).out);
  EXPECT_NE(answer_to({"help", "wood"}).out, answer_to({"wood", "--help"}).out) << "a topic comes first";
  EXPECT_NE(answer_to({"help", "wood"}).out.find("coatday wood --help"), std::string::npos);
}

TEST(Help, OfNothingNamesTheNearest) {
  const Outcome topic = answer_to({"help", "dtaes"}), command = answer_to({"help", "qoute"});
  EXPECT_EQ(topic.status, bad_input);
  EXPECT_EQ(topic.err, "coatday: error: no help on 'dtaes'; did you mean 'dates'? (coatday help lists the topics)\n");
  EXPECT_EQ(command.err, "coatday: error: no help on 'qoute'; did you mean 'quote'? (coatday help lists the topics)\n");
}

TEST(Help, FitsTheTerminal) {
  std::string all = help();
  for (const Command& command : commands()) all += help(command);
  for (const Topic& topic : topics()) all += help(topic);
  std::istringstream lines(all);
  for (std::string line; std::getline(lines, line);) EXPECT_LE(report::Text(line).width(), 80) << line;
}

std::size_t words_in(const std::string& text) {
  std::istringstream in(text);
  std::size_t count = 0;
  for (std::string word; in >> word;) ++count;
  return count;
}

/// Those of a paragraph or an entry.
std::vector<std::string> sentences_of(const std::string& text) {
  static const std::regex end("[.?!:]\\s+");
  return {std::sregex_token_iterator(text.begin(), text.end(), end, -1), std::sregex_token_iterator()};
}

class Topics : public testing::TestWithParam<Topic> {};

TEST_P(Topics, AreShort) {
  const Topic& topic = GetParam();
  EXPECT_LE(words_in(std::string(topic.text)), 400U);
  for (const Entry& block : blocks(topic)) {
    for (const std::string& sentence : sentences_of(block.text)) EXPECT_LE(words_in(sentence), 25U) << sentence;
  }
}

TEST_P(Topics, UseTheWordsOfTheGlossary) {
  std::string text(GetParam().text);
  std::replace(text.begin(), text.end(), '\n', ' ');
  for (const char* old : {"late side", "early side", "reckon", "told", "feasible", "clearance", "all round", "proven best"})
    EXPECT_EQ(text.find(old), std::string::npos) << old;
}

TEST_P(Topics, ReadAsTheyArePrinted) {
  const std::string name(GetParam().name);
  const Outcome outcome = answer_to({"help", name});
  EXPECT_EQ(outcome.status, done);
  golden::expect_golden("cli/help/topic-" + name + ".txt", outcome.out);
}

/// A block that only a label fills, or none, is a slip in the file.
TEST_P(Topics, HaveWholeBlocks) {
  EXPECT_FALSE(title(GetParam()).empty());
  for (const Entry& block : blocks(GetParam())) EXPECT_FALSE(block.label.empty() && block.text.empty());
}

INSTANTIATE_TEST_SUITE_P(All, Topics, testing::ValuesIn(topics()), [](const auto& instance) { return std::string(instance.param.name); });

}  // namespace
}  // namespace coatday::cli
