// What YAML lets pass and these files do not: the table of yaml-cpp's habits, one by one, and the files that must be read.
#include "input/document.h"

#include <gtest/gtest.h>

#include <chrono>

namespace coatday::input {
namespace {

std::string first_mistake(const std::string& text) {
  const Source source("f", text);
  Mistakes mistakes;
  const auto value = read_document(source, mistakes);
  if (value) return "";
  return to_text(mistakes.sorted().front());
}

struct Read {
  Source source;
  Mistakes mistakes;
  std::optional<Value> value;
  explicit Read(std::string text) : source("f", std::move(text)), value(read_document(source, mistakes)) {}
};

std::string times(std::size_t n, const std::string& text) {
  std::string all;
  for (std::size_t i = 0; i < n; ++i) all += text;
  return all;
}

// Against counting from the beginning, over lines that are empty, short, and longer than what is kept of them.
TEST(Source, FindsEveryPlaceAndEveryLine) {
  std::string text;
  for (const unsigned size : {0U, 0U, 1U, 62U, 0U, 64U, 3U, 200U, 0U, 63U, 128U, 5U}) text += times(size, "é") + "\n";
  text += times(100, "\n") + "last";
  const Source source("f", text);
  int line = 1, column = 1;
  std::string so_far;
  for (std::size_t at = 0; at < text.size(); ++at) {
    const bool begins = (static_cast<unsigned char>(text[at]) & 0xC0U) != 0x80U;
    if (begins) {
      ASSERT_EQ(source.location(at).line, line) << at;
      ASSERT_EQ(source.location(at).column, column) << at;
      ++column;
    }
    if (text[at] != '\n') {
      so_far += text[at];
      continue;
    }
    ASSERT_EQ(source.line(line), so_far) << line;
    so_far.clear();
    column = 1;
    ++line;
  }
  EXPECT_EQ(source.line(line), "last");
  EXPECT_EQ(source.line(line + 1), "");
  EXPECT_EQ(source.line(0), "");
}

TEST(Document, RefusesDepthQuickly) {
  const auto begin = std::chrono::steady_clock::now();
  for (const char* opening : {"[", "{a: ", "- ", "? ", "[\n", "{a:\n"}) {
    const std::string told = first_mistake(times(100'000, opening));
    EXPECT_NE(told.find("more than 32 lists and maps within each other"), std::string::npos) << opening << told;
  }
  const std::string closed = times(100'000, "[") + times(100'000, "]");
  EXPECT_NE(first_mistake(closed).find("f:1:33: error: more than 32 lists and maps within each other"), std::string::npos)
      << first_mistake(closed);
  EXPECT_LT(std::chrono::steady_clock::now() - begin, std::chrono::seconds(20));
}

TEST(Document, ReadsTheDeepestThatIsAllowed) {
  EXPECT_TRUE(Read(times(32, "[") + "a" + times(32, "]")).value);
  EXPECT_FALSE(Read(times(33, "[") + "a" + times(33, "]")).value);
}

TEST(Document, RefusesAliasesBeforeTheyGrow) {
  EXPECT_NE(first_mistake("a: &a [x, x]\nb: [*a, *a]\n").find("f:1:4: error: anchors"), std::string::npos);
  EXPECT_NE(first_mistake("a: &a [1, *a]\n").find("f:1:4: error: anchors"), std::string::npos);
}

TEST(Document, RefusesWhatIsNoText) {
  EXPECT_NE(first_mistake(std::string("a: b\0c\n", 7)).find("f:1:5: error: control character 0x00"), std::string::npos);
  EXPECT_NE(first_mistake("\xFF\xFE"
                          "a\0:\0")
                .find("f:1:1: error: byte 0xFF is not UTF-8"),
            std::string::npos);
  EXPECT_NE(first_mistake("a: é\x80\n").find("f:1:5: error: byte 0x80 is not UTF-8"), std::string::npos);
  EXPECT_NE(first_mistake("a: \xC2\x85\n").find("f:1:4: error: control character 0x85"), std::string::npos);
  EXPECT_NE(first_mistake("a: b\rc: d\r").find("f:1:5: error: a carriage return"), std::string::npos);
  EXPECT_NE(first_mistake("a: \"x\\0y\"\n").find("f:1:4: error: a control character stands in these quotes"), std::string::npos);
  EXPECT_NE(first_mistake(std::string(5'000'000, '#')).find("f:1:1: error: this file is larger than 1 MiB"), std::string::npos);
}

TEST(Document, ReadsByteOrderMarkAndWindowsLineEnds) {
  const Read read(
      "\xEF\xBB\xBF"
      "a: b\r\nc:\r\n  - é\r\n  - \"2\"\r\n");
  ASSERT_TRUE(read.value) << to_text(read.mistakes.sorted().front());
  ASSERT_EQ(read.value->entries.size(), 2U);
  EXPECT_EQ(read.value->entries[0].value.text, "b");
  EXPECT_EQ(read.value->entries[0].value.where().column, 4);
  const Value& last = read.value->entries[1].value.items.at(1);
  EXPECT_EQ(last.text, "2");
  EXPECT_EQ(last.where().line, 4);
  EXPECT_EQ(last.where().column, 5);
}

TEST(Document, ReadsWhatPeopleWrite) {
  const Read read("a: 24\"\nb: 3/4\"\nc: 20 °C\nd: 08:30\ne: 40-60%\nf: |\n  two\n  lines\ng: ''\nh: 'it''s'\ni: \"a\n  b\"\nj: x # y\n");
  ASSERT_TRUE(read.value) << to_text(read.mistakes.sorted().front());
  std::vector<std::string> texts;
  for (const Entry& entry : read.value->entries) texts.push_back(entry.value.text);
  EXPECT_EQ(texts, (std::vector<std::string>{"24\"", "3/4\"", "20 °C", "08:30", "40-60%", "two\nlines\n", "", "it's", "a b", "x"}));
}

TEST(Document, CountsColumnsInCharacters) {
  const Read read("é: ü\n");
  ASSERT_TRUE(read.value);
  EXPECT_EQ(read.value->entries[0].value.where().column, 4);
}

TEST(Document, ReadsALargeFileInLinearTime) {
  std::string text;
  for (int i = 0; text.size() < 1'000'000; ++i) text += "- {part: leg " + std::to_string(i) + ", count: 4, length: 28 in}\n";
  const auto begin = std::chrono::steady_clock::now();
  const Read read(std::move(text));
  EXPECT_TRUE(read.value);
  EXPECT_LT(std::chrono::steady_clock::now() - begin, std::chrono::seconds(20));
}

}  // namespace
}  // namespace coatday::input
