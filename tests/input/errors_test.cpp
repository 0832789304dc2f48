// Every message of the reader, word for word. Each folder in errors/ holds the files of a case and what is printed for them; a file that it
// lacks comes from common/. UPDATE_GOLDEN=1 writes expected.txt anew; read the difference before keeping it.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <regex>

#include "input/earlier_plan.h"
#include "tests/input/folder.h"
#include "tests/support/source_dir.h"

namespace coatday::input {
namespace {

namespace fs = std::filesystem;

fs::path errors_dir() { return tests_dir() + "errors"; }

std::vector<std::string> cases() {
  std::vector<std::string> names;
  for (const auto& entry : fs::directory_iterator(errors_dir())) names.push_back(entry.path().filename().string());
  std::ranges::sort(names);
  return names;
}

Folder files_of(const fs::path& dir) {
  Folder folder;
  for (const auto& entry : fs::directory_iterator(dir)) folder[entry.path().filename().string()] = slurp(entry.path()).value();
  return folder;
}

// What is set beside the files, a line each.
std::vector<std::string> lines_of(const fs::path& file) {
  std::ifstream text(file);
  std::vector<std::string> lines;
  for (std::string line; std::getline(text, line);) lines.push_back(line);
  return lines;
}

class Errors : public testing::TestWithParam<std::string> {};

TEST_P(Errors, AreToldWordForWord) {
  const fs::path dir = errors_dir() / GetParam();
  std::vector<fs::path> orders{"order.yaml"};
  if (fs::exists(dir / "order-2.yaml")) orders.emplace_back("order-2.yaml");
  const std::vector<std::string> asked = lines_of(dir / "asked.txt");  // the shop's file that the orders have to name
  const Opening opened = open_orders(orders, "schedules", from(files_of(dir)), lines_of(dir / "set.txt"),
                                     asked.empty() ? fs::path() : fs::path(asked.front()));
  std::string told = printed(opened);
  if (GetParam().starts_with("earlier-")) {  // an earlier plan that is none; the order is good
    const auto earlier = read_earlier_plan("earlier.json", from(files_of(dir)));
    told = earlier ? "" : to_text(earlier.error()) + "\n";
  }
  if (std::getenv("UPDATE_GOLDEN") != nullptr) std::ofstream(dir / "expected.txt", std::ios::binary) << told;
  EXPECT_FALSE(told.empty());
  EXPECT_EQ(opened.has_value(), GetParam().starts_with("earlier-"));
  EXPECT_EQ(told, slurp(dir / "expected.txt").value_or("no expected.txt"));
}

std::string test_name(const testing::TestParamInfo<std::string>& info) {
  std::string name = info.param;
  std::ranges::replace(name, '-', '_');
  return name;
}

INSTANTIATE_TEST_SUITE_P(Folder, Errors, testing::ValuesIn(cases()), test_name);

// The longest stretch of a message's format without a value in it.
std::string fixed_part(std::string format) {
  format = std::regex_replace(format, std::regex(R"(\\(.))"), "$1");
  const std::regex value(R"(\{[^}]*\})");
  std::string longest;
  for (std::sregex_token_iterator part(format.begin(), format.end(), value, -1), end; part != end; ++part) {
    if (part->length() > static_cast<std::ptrdiff_t>(longest.size())) longest = part->str();
  }
  return longest;
}

std::vector<std::string> messages_in(const fs::path& source) {
  const std::string text = std::regex_replace(slurp(source).value(), std::regex("(//|#include)[^\n]*"), "");
  const std::regex literal(R"re("((?:[^"\\\n]|\\.)*)")re");
  std::vector<std::string> messages;
  for (std::sregex_iterator at(text.begin(), text.end(), literal), end; at != end; ++at) {
    const std::string words = (*at)[1];
    if (std::ranges::count(words, ' ') >= 3) messages.push_back(fixed_part(words));
  }
  return messages;
}

TEST(Errors, HaveACaseForEveryMessageInTheSource) {
  const std::vector<std::string> no_messages{"the product's own record", "this file is larger than 1 MiB", " is larger than 1 MiB; no "};
  std::string told;
  for (const std::string& name : cases()) told += slurp(errors_dir() / name / "expected.txt").value_or("");
  for (const auto& entry : fs::directory_iterator(source_dir() + "/src/input")) {
    if (entry.path().extension() != ".cpp" || entry.path().filename() == "read_file.cpp")
      continue;  // what the disk says has tests of its own
    for (const std::string& message : messages_in(entry.path())) {
      if (std::ranges::find(no_messages, message) != no_messages.end()) continue;
      EXPECT_NE(told.find(message), std::string::npos)
          << entry.path().filename() << " says \"" << message << "\", which no case in errors/ shows";
    }
  }
}

}  // namespace
}  // namespace coatday::input
