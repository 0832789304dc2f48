// The samples are golden reports: what each prints stands beside it. UPDATE_GOLDEN=1 rewrites them; a person reads the difference.

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "cli/run.h"
#include "report/papers/page.h"
#include "tests/support/source_dir.h"

namespace coatday {
namespace {

namespace fs = std::filesystem;

const fs::path root = source_dir();

std::vector<std::string> samples() {
  std::vector<std::string> names;
  for (const auto& entry : fs::directory_iterator(root / "samples")) {
    if (fs::exists(entry.path() / "shop.yaml")) names.push_back(entry.path().filename().string());
  }
  std::sort(names.begin(), names.end());
  return names;
}

/// Its order, or all of several.
std::vector<std::string> orders(const std::string& sample) {
  std::vector<std::string> files;
  for (const auto& entry : fs::directory_iterator(root / "samples" / sample)) {
    const std::string name = entry.path().filename().string();
    if (name.starts_with("order")) files.push_back("samples/" + sample + "/" + name);
  }
  std::sort(files.begin(), files.end());
  return files;
}

std::string text_of(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

cli::Environment environment() {
  cli::Environment environment;
  environment.read = [](const fs::path& path) { return input::read_from_disk()(root / path); };
  environment.schedules = root / "schedules";
  return environment;
}

class Samples : public testing::TestWithParam<std::string> {};

void expect_printed(const std::string& command, const std::string& sample, const std::string& file) {
  std::vector<std::string> words = orders(sample);
  words.insert(words.begin(), command);
  const cli::Outcome outcome = cli::run(words, environment());
  EXPECT_LE(outcome.status, 1) << outcome.err;
  const fs::path golden = root / "samples" / sample / file;
  if (std::getenv("UPDATE_GOLDEN") != nullptr) std::ofstream(golden, std::ios::binary) << outcome.out;
  EXPECT_EQ(outcome.out, text_of(golden));
}

TEST_P(Samples, PrintWhatStandsBesideThem) { expect_printed("plan", GetParam(), "expected.txt"); }

/// Of the main one, what else goes on paper.
TEST(MainSample, PrintsItsPapers) {
  for (const std::string command : {"sheet", "quote", "card"}) expect_printed(command, "library-table", command + ".txt");
}

TEST_P(Samples, HaveAPage) {
  std::vector<std::string> words = orders(GetParam());
  words.insert(words.begin(), "page");
  words.insert(words.end(), {"-o", "page.html"});
  const cli::Outcome outcome = cli::run(words, environment());
  EXPECT_LE(outcome.status, 1) << outcome.err;
  ASSERT_TRUE(outcome.file);
  const std::string& html = outcome.file->content;
  EXPECT_TRUE(html.starts_with("<!doctype html>"));
  EXPECT_TRUE(html.ends_with("</html>\n"));
  EXPECT_NE(html.find(report::page_mark), std::string::npos);
  EXPECT_LT(html.size(), 300'000U);
  const bool planned = outcome.out.find("no plan") == std::string::npos;
  EXPECT_EQ(html.find("id=\"timeline\"") != std::string::npos, planned);
  EXPECT_EQ(html.find("id=\"reasons\"") == std::string::npos, planned);
  const bool left_behind = GetParam() == "top-face-only";
  EXPECT_EQ(html.find(">BARE<") != std::string::npos, left_behind);
  EXPECT_EQ(html.find(">NONE<") != std::string::npos, left_behind);
}

INSTANTIATE_TEST_SUITE_P(All, Samples, testing::ValuesIn(samples()), [](const auto& instance) {
  std::string name = instance.param;
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
});

/// What `coatday wood` prints of it.
TEST(Samples, WoodOfTheRefectoryTable) {
  const cli::Outcome outcome = cli::run({"wood", "samples/refectory-table/order.yaml"}, environment());
  EXPECT_EQ(outcome.status, 0) << outcome.err;
  const fs::path golden = root / "samples" / "refectory-table" / "expected-wood.txt";
  if (std::getenv("UPDATE_GOLDEN") != nullptr) std::ofstream(golden, std::ios::binary) << outcome.out;
  EXPECT_EQ(outcome.out, text_of(golden));
}

/// In the main sample the nights after two days are too cold for the clear.
TEST(Page, TellsWhyATuesdayWaits) {
  const cli::Outcome outcome = cli::run({"page", "samples/library-table/order.yaml", "-o", "page.html"}, environment());
  ASSERT_TRUE(outcome.file);
  const std::string& html = outcome.file->content;
  const std::size_t tuesday = html.find("Tue\u00a026\u00a0Jan: clear 2");
  ASSERT_NE(tuesday, std::string::npos);
  const std::string sentence = html.substr(tuesday, html.find('<', tuesday) - tuesday);
  EXPECT_NE(sentence.find("does not fit water-based clear: 49 °F within 1 day of the coat is below its limit of 50 °F"), std::string::npos)
      << sentence;
}

/// Oil at half its rate where the room is closed, water-based clear faster where its air moves.
TEST(Samples, WhyTellsWhatTheShutRoomDoes) {
  const auto why = [](const std::string& event) { return cli::run({"why", "samples/shut-room/order.yaml", event}, environment()).out; };
  const std::string oil = why("chest/lid/oil-1/first"), clear = why("shelf/shelf/clear-1/first");
  EXPECT_NE(oil.find("room        drying at 0.5 and cure at 0.5 times the rate of an open room where\n"), std::string::npos) << oil;
  EXPECT_NE(clear.find("room        drying at 1.5 times the rate of an open room where the air"), std::string::npos) << clear;
}

/// The README shows real output: the head of the main sample.
TEST(Readme, ShowsTheMainSample) {
  const std::string readme = text_of(root / "README.md");
  const std::string printed = text_of(root / "samples" / "library-table" / "expected.txt");
  const std::string first_screen = printed.substr(0, printed.find("\n\n"));
  ASSERT_FALSE(first_screen.empty());
  EXPECT_NE(readme.find(first_screen), std::string::npos);
}

}  // namespace
}  // namespace coatday
