// The soak itself: it draws the same for a seed, sees planted faults, and shrinks them.

#include "tests/soak/soak.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include <algorithm>
#include <csignal>
#include <fstream>

#include "tests/soak/history.h"
#include "tests/soak/mutate.h"
#include "tests/soak/shrink.h"
#include "tests/support/source_dir.h"

namespace coatday::soak {
namespace {

namespace fs = std::filesystem;

const Known& known() {
  static const Known all = known_finishes(fs::path(source_dir()) / "schedules");
  return all;
}

bool has_key(const Case& one, const std::string& key) {
  bool found = false;
  for (const auto& [name, tree] : one.trees) each(tree, [&](const Tree& value) { found = found || value.key == key; });
  return found;
}

/// The first case that has a key.
Case case_with(const std::string& key) {
  std::uint64_t seed = 1;
  while (!has_key(make_case(seed, known()), key)) ++seed;
  return make_case(seed, known());
}

std::size_t size_of(const Case& one) {
  std::size_t values = 0;
  for (const auto& [name, tree] : one.trees) each(tree, [&values](const Tree&) { ++values; });
  return values;
}

struct Folder {
  Folder() : path(fs::temp_directory_path() / ("soak-test-" + std::to_string(getpid()))) { fs::create_directories(path); }
  ~Folder() { fs::remove_all(path); }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  fs::path path;
};

/// A program that does as the script says.
Program scripted(const Folder& folder, const std::string& script) {
  const fs::path file = folder.path / "program";
  std::ofstream(file) << "#!/bin/sh\n" << script;
  chmod(file.c_str(), 0755);
  return {file, fs::path(source_dir()) / "schedules"};
}

Outcome soaked(const Folder& folder, const std::string& script) {
  Settings settings;
  settings.program = scripted(folder, script);
  settings.folder = folder.path / "soak";
  settings.orders = 6;
  settings.mutations_each = 1;
  settings.workers = 2;
  settings.most_tries = 40;
  return soak(settings);
}

TEST(Soak, DrawsTheSameForASeed) {
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    EXPECT_EQ(make_case(seed, known()), make_case(seed, known())) << seed;
    EXPECT_NE(files_of(make_case(seed, known())), files_of(make_case(seed + 1, known()))) << seed;
  }
  Random first(1), second(2);
  static_cast<void>(first.next());
  EXPECT_NE(first.next(), second.next()) << "the next seed draws the same, one later";
  Random one(7, 3), again(7, 3);
  const std::string file = files_of(make_case(1, known())).at("order.yaml");
  EXPECT_EQ(mutated(one, file), mutated(again, file));
}

TEST(Soak, WritesTreesThatReadAsTheyWere) {
  const Folder folder;
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    const Case one = make_case(seed, known());
    write(files_of(one), folder.path / "case");
    for (const auto& [name, tree] : one.trees) EXPECT_EQ(read_yaml(folder.path / "case" / name), tree) << seed << " " << name;
  }
}

TEST(Soak, ShrinksToWhatMatters) {
  const Case large = case_with("rest");
  const Shrunk shrunk = shrink(
      large, [](const Case& one) { return has_key(one, "rest"); }, 2000);
  EXPECT_TRUE(has_key(shrunk.small, "rest"));
  EXPECT_LE(size_of(shrunk.small), 12U) << to_yaml(shrunk.small.trees.at("order.yaml"));
  EXPECT_TRUE(shrunk.small.tables.empty());
  EXPECT_EQ(shrunk.small.orders.size(), 1U);
}

TEST(Soak, StopsShrinkingInTime) {
  int asked = 0;
  const auto still = [&asked](const Case&) { return ++asked < 0; };
  EXPECT_EQ(shrink(case_with("rest"), still, 15).tries, 15);
  EXPECT_EQ(asked, 15);
}

TEST(Soak, HalvesNumbers) {
  Case one;
  one.orders = {"order.yaml"};
  one.trees["order.yaml"] = map();
  set(one.trees["order.yaml"], "count", "64");
  const auto still = [](const Case& smaller) {
    const Tree* count = find(smaller.trees.at("order.yaml"), "count");
    return count != nullptr && std::stoi(count->text) >= 7;
  };
  EXPECT_EQ(find(shrink(one, still, 100).small.trees.at("order.yaml"), "count")->text, "8");
}

TEST(Soak, ReportsAPlanThatIsRefusedByItsOwnCheck) {
  const Folder folder;
  const Outcome outcome = soaked(folder, "[ $1 = check ] && { echo fine; exit 0; }\necho '- planted-fault: this is wrong' >&2\nexit 3\n");
  ASSERT_TRUE(outcome.kinds.contains("exit-3-planted-fault"));
  EXPECT_GE(outcome.kinds.at("exit-3-planted-fault").count, 6U);
  const fs::path kept = folder.path / "soak" / outcome.kinds.at("exit-3-planted-fault").folder;
  EXPECT_TRUE(fs::exists(kept / "command.txt"));
  EXPECT_LE(fs::file_size(kept / "order.yaml"), 200U) << "it was not shrunk";
  const std::string text = report(outcome, Settings{}, known(), fs::path(source_dir()) / "samples/every-key");
  EXPECT_TRUE(text.ends_with("6 orders, 6 mutations, " + std::to_string(outcome.finds()) + " finds\n")) << text;
}

TEST(Soak, HasNoFindsWhereAllIsWell) {
  const Folder folder;
  const Outcome outcome = soaked(folder, "echo '{\"result\": {\"status\": \"planned\"}, \"events\": []}'\n");
  for (const auto& [name, kind] : outcome.kinds) ADD_FAILURE() << name << ": " << kind.what;
  EXPECT_EQ(outcome.counts.cases, 6U);
}

TEST(Soak, ComplainsOfARun) {
  const auto kind = [](soak::Run run) {
    run.arguments = {"plan", "order.yaml", "--format", "json"};
    const auto complaint = complaint_of(run);
    return complaint ? complaint->kind : "";
  };
  EXPECT_EQ(kind({{"plan"}, 0, 0, 1, 30, "{}", ""}), "");
  EXPECT_EQ(kind({{"plan"}, 0, 0, 1, 30, "", ""}), "empty-output");
  EXPECT_EQ(kind({{"plan"}, 0, 0, 1, 30, "{", ""}), "bad-json");
  EXPECT_EQ(kind({{"plan"}, -1, SIGSEGV, 1, 30, "", ""}), "signal-11");
  EXPECT_EQ(kind({{"plan"}, -1, SIGXCPU, 20, 30, "", ""}), "hang");
  EXPECT_EQ(kind({{"plan"}, 0, 0, 1, 3000, "{}", ""}), "memory");
  EXPECT_EQ(kind({{"plan"}, 1, 0, 1, 30, "", "ERROR: AddressSanitizer: heap-use-after-free"}), "sanitizer");
  EXPECT_EQ(kind({{"plan"}, 2, 0, 1, 30, "", "This is a bug in coatday"}), "says-bug");
}

TEST(Soak, WantsThePlaceOfEveryMistake) {
  soak::Run run{{"check", "order.yaml"}, 2, 0, 0, 0, "", "order.yaml:5:11: error: unknown schedule\n"};
  EXPECT_FALSE(complaint_of_mutant(run));
  run.err = "coatday: error: something is wrong\n";
  ASSERT_TRUE(complaint_of_mutant(run));
  EXPECT_EQ(complaint_of_mutant(run)->kind, "no-place");
}

TEST(Soak, WritesWhatWasDoneAsHistory) {
  Case one = make_case(1, known());
  one.orders = {"order.yaml"};
  const auto plan = nlohmann::json::parse(R"({"pieces": [{"id": "p"}], "events": [
    {"id": "p/a", "piece": "p", "start": "2027-03-01T08:00:00-06:00", "end": "2027-03-01T09:00:00-06:00"}]})");
  Random random(1);
  const auto later = some_time_later(random, one, plan);
  ASSERT_TRUE(later);
  const Tree* history = find(later->trees.at("order.yaml"), "history");
  ASSERT_TRUE(history != nullptr && history->children.size() == 1);
  EXPECT_EQ(find(history->children[0], "event")->text, "p/a");
  EXPECT_EQ(find(history->children[0], "start")->text, "2027-03-01 08:00");
  EXPECT_GE(later->from, "2027-03-01 09:00");
}

}  // namespace
}  // namespace coatday::soak
