// The papers of a plan agree: each early, expected and safe date of its text is the same on the page, the card and the calendar.

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <regex>
#include <sstream>

#include "cli/run.h"
#include "quantity/text.h"
#include "tests/support/source_dir.h"

namespace coatday {
namespace {

namespace fs = std::filesystem;

const fs::path root = source_dir();

std::string replaced(std::string text, const std::string& old, const std::string& by) {
  for (std::size_t at = text.find(old); at != std::string::npos; at = text.find(old, at + by.size())) text.replace(at, old.size(), by);
  return text;
}

/// The words alone, with one space between them.
std::string plain(const std::string& text) {
  const std::string untagged = std::regex_replace(text, std::regex("<[^>]*>"), " ");
  return std::regex_replace(replaced(untagged, "\u00a0", " "), std::regex("\\s+"), " ");
}

std::vector<std::string> orders() {
  std::vector<std::string> files;
  for (const auto& sample : fs::directory_iterator(root / "samples")) {
    if (!sample.is_directory()) continue;
    for (const auto& file : fs::directory_iterator(sample.path())) {
      if (file.path().filename().string().starts_with("order")) files.push_back(fs::relative(file.path(), root).string());
    }
  }
  std::sort(files.begin(), files.end());
  return files;
}

std::string printed(std::vector<std::string> words) {
  cli::Environment environment;
  environment.read = [](const fs::path& path) { return input::read_from_disk()(root / path); };
  environment.schedules = root / "schedules";
  const cli::Outcome outcome = cli::run(words, environment);
  return outcome.file ? outcome.file->content : outcome.out;
}

/// A line of the hand-over: what may be done, and its three dates; "–" where there is none.
struct Row {
  std::string what, early, expected, late;
};

const std::string date_pattern = "[A-Z][a-z]{2} \\d{1,2} [A-Z][a-z]{2} \\d\\d:\\d\\d";

std::vector<Row> rows_of(const std::string& plan) {
  const std::regex line("    (handle|wrap|deliver|careful use|full use) +(" + date_pattern + "|-|) +(" + date_pattern + "|-) +(" +
                        date_pattern + "|-)");
  const auto cell = [](const std::string& text) { return text.empty() || text == "-" ? "–" : text; };
  std::vector<Row> rows;
  std::istringstream lines(plan.substr(std::min(plan.find("\nHand-over"), plan.size())));
  for (std::string text; std::getline(lines, text);) {
    std::smatch match;
    if (std::regex_match(text, match, line)) rows.push_back({match[1], cell(match[2]), cell(match[3]), cell(match[4])});
  }
  return rows;
}

/// The first whole day after "Mon 15 Feb 11:54", with its year, as the card has it.
std::string day_after(const std::string& moment) {
  const std::string date = moment.substr(0, moment.rfind(' '));
  for (LocalDay day = LocalDay(date::year(2026) / 1 / 1); day < LocalDay(date::year(2032) / 1 / 1); day += date::days(1)) {
    if (short_date(day) == date) return long_date(moment.ends_with("00:00") ? day : day + date::days(1));
  }
  return "no such date: " + moment;
}

class Agreement : public testing::TestWithParam<std::string> {};

TEST_P(Agreement, OfDates) {
  const std::string& order = GetParam();
  const std::string text = printed({"plan", order});
  const std::vector<Row> rows = rows_of(text);
  if (text.find("There is no plan") != std::string::npos) {
    EXPECT_TRUE(rows.empty());
    return;
  }
  ASSERT_FALSE(rows.empty()) << text;
  const std::string page = plain(printed({"page", order, "-o", "page.html"})), card = plain(printed({"card", order}));
  const std::string calendar = plain(replaced(printed({"calendar", order}), "\r\n ", ""));
  for (const Row& row : rows) {
    const std::string shown = row.what + " " + row.early + " " + row.expected + " " + row.late;
    EXPECT_NE(page.find(shown), std::string::npos) << "the page has no: " << shown;
    if (row.late == "–") continue;
    if (row.what != "handle" && row.what != "deliver") {
      EXPECT_NE(card.find(day_after(row.late)), std::string::npos) << "the card has no: " << day_after(row.late) << " for " << shown;
    }
    if (row.what == "handle" || row.what == "careful use") continue;
    const std::string both = "Safe to promise: " + row.late + (row.expected == "–" ? "" : "\\nExpected: " + row.expected);
    EXPECT_NE(calendar.find(both), std::string::npos) << "the calendar has no: " << both;
  }
  const std::string first_screen = plain(text.substr(0, text.find("\n\n")));
  const std::regex date(date_pattern);
  for (auto at = std::sregex_iterator(first_screen.begin(), first_screen.end(), date); at != std::sregex_iterator(); ++at)
    EXPECT_NE(page.find(at->str()), std::string::npos) << "the page has no: " << at->str();
}

INSTANTIATE_TEST_SUITE_P(Every, Agreement, testing::ValuesIn(orders()),
                         [](const auto& instance) { return std::regex_replace(instance.param, std::regex("[^A-Za-z0-9]+"), "_"); });

}  // namespace
}  // namespace coatday
