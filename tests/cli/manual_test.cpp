// The manual page and the completion, as an installation gets them.
#include "cli/manual.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <sstream>

#include "cli/completion.h"
#include "cli/run.h"
#include "tests/cli/typed.h"
#include "tests/report/golden.h"

namespace coatday::cli {
namespace {

/// The titles of its parts.
std::string outline(const std::string& page) {
  std::istringstream lines(page);
  std::string titles;
  for (std::string line; std::getline(lines, line);) {
    if (line.starts_with(".SH ") || line.starts_with(".SS ")) titles += line + "\n";
  }
  return titles;
}

TEST(Manual, Outline) { golden::expect_golden("cli/help/manual-outline.txt", outline(manual())); }

TEST(Manual, IsPlainAscii) {
  const std::string page = manual();
  const auto strange = std::find_if(page.begin(), page.end(), [](char c) { return (c < ' ' || c > '~') && c != '\n'; });
  EXPECT_EQ(strange, page.end()) << page.substr(static_cast<std::size_t>(strange - page.begin()), 40)
                                 << ": name the sign in roff.cpp, or write it in ASCII";
}

TEST(Manual, AndCompletionArePrinted) {
  EXPECT_EQ(run({"help", "--man"}, typed({})).out, manual());
  EXPECT_EQ(run({"help", "--completion", "bash"}, typed({})).out, bash_completion());
  EXPECT_EQ(run({"help", "--completion", "fish"}, typed({})).status, bad_input);
  EXPECT_EQ(run({"help", "dates", "--man"}, typed({})).err,
            "coatday: error: help shows one thing at a time: a TOPIC, --man or --completion\n");
}

}  // namespace
}  // namespace coatday::cli
