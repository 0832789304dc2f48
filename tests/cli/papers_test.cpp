// The customer's card and the quote, of the samples.
#include <gtest/gtest.h>

#include <sstream>

#include "cli/run.h"
#include "report/document/lines.h"
#include "tests/support/source_dir.h"

namespace coatday::cli {
namespace {

namespace fs = std::filesystem;

bool holds(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

/// With something in the files changed.
Outcome run_with(const std::vector<std::string>& words, const std::string& from = "", const std::string& to = "") {
  Environment environment;
  environment.read = [from, to](const fs::path& path) {
    auto text = input::read_from_disk()(fs::path(source_dir()) / path);
    const std::size_t at = text && !from.empty() ? text->find(from) : std::string::npos;
    if (at != std::string::npos) text->replace(at, from.size(), to);
    return text;
  };
  environment.schedules = source_dir() + "/schedules";
  return run(words, environment);
}

const std::string table = "samples/library-table/order.yaml";

/// 2027-04-13 -> Wed 14 Apr 2027.
std::string day_after(const std::string& iso) {
  const auto day = parse_date(iso.substr(0, 10));
  return day ? long_date(*day + date::days(1)) : "no date: " + iso;
}

TEST(Card, TellsTheLateSideAndDefersToLawAndLabel) {
  const Outcome card = run_with({"card", table});
  ASSERT_EQ(card.status, 0) << card.err;
  EXPECT_TRUE(holds(card.out, "3 coats of water-based clear")) << card.out;
  EXPECT_TRUE(holds(card.out, "by the law"));
  EXPECT_TRUE(holds(card.out, "child"));
  const std::string json = run_with({"plan", table, "--format", "json"}).out;
  const std::size_t late = json.find("\"ready_safe\"");
  for (const char* stage : {"wrap", "careful_use", "full_use"}) {
    const std::string key = std::string("\"") + stage + "\":\"";
    const std::string day = day_after(json.substr(json.find(key, late) + key.size(), 10));
    EXPECT_TRUE(holds(card.out, day)) << stage << " " << day << "\n" << card.out;
  }
}

TEST(Card, AndQuoteFitThePaper) {
  for (const char* command : {"card", "quote"}) {
    for (const char* sample : {"library-table", "dining-table", "bowls-and-boards", "every-key", "top-face-declared"}) {
      const Outcome outcome = run_with({command, std::string("samples/") + sample + "/order.yaml"});
      EXPECT_LE(outcome.status, 1) << outcome.err;
      EXPECT_FALSE(outcome.out.empty()) << command << sample;
      std::istringstream lines(outcome.out);
      for (std::string line; std::getline(lines, line);) EXPECT_LE(report::Text(line).width(), 80) << line;
    }
  }
}

TEST(Card, NamesStayText) {
  const Outcome card = run_with({"card", table}, "piece: library table", "piece: \"<script>alert(1)</script> =1 ש table\"");
  EXPECT_TRUE(holds(card.out, "<script>")) << card.out << card.err;
  EXPECT_TRUE(holds(card.out, "</script> =1 ש table")) << card.out;
}

TEST(Quote, WithoutRatesItSaysWhichKeyGivesMoney) {
  const std::string with = run_with({"quote", table}).out;
  EXPECT_TRUE(holds(with, "at 48.00 USD an hour")) << with;
  EXPECT_TRUE(holds(with, "markup on materials, 15 %"));
  const Outcome without = run_with({"quote", table}, "rates: {hour: 48, material markup: 15 %}\n", "");
  EXPECT_EQ(without.status, done);
  EXPECT_TRUE(holds(without.out, "'rates: {hour:")) << without.out;
  EXPECT_FALSE(holds(without.out, "USD an hour"));
  EXPECT_TRUE(holds(run_with({"quote", table, "--set", "rates.hour=55"}).out, "at 55.00 USD an hour"));
  EXPECT_TRUE(run_with({"quote", table, "--format", "json"}).out.starts_with("{\n  \"schema\": \"coatday-quote/1\""));
}

TEST(Quote, NoPlanNoQuoteNoCard) {
  for (const char* command : {"quote", "card", "sheet"}) {
    const Outcome outcome = run_with({command, "samples/damp-july/order.yaml"});
    EXPECT_EQ(outcome.status, no_plan);
    EXPECT_EQ(outcome.out, "");
    EXPECT_FALSE(outcome.err.empty());
  }
}

}  // namespace
}  // namespace coatday::cli
