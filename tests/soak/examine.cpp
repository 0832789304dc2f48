#include "tests/soak/examine.h"

#include <fmt/format.h>

#include "tests/soak/history.h"
#include "tests/soak/mutate.h"

namespace coatday::soak {
namespace {

struct Examiner {
  Bench& bench;
  Random random;
  std::vector<Find> finds{};

  /// Whether there is no complaint.
  bool ask(const Probe& probe, const Case& one) {
    auto complaint = probe(one, bench);
    if (!complaint) return true;
    finds.push_back({*std::move(complaint), one, probe});
    return false;
  }

  void ask_relation(const Case& one) {
    const Relation& relation = relations()[random.below(relations().size())];
    ++bench.counts.used[std::string("relation: ") + relation.name];
    ask(relation.probe, one);
  }

  /// What is left of the order some time later, once with the old plan beside it.
  void ask_later(const Case& one, const nlohmann::json& plan_before) {
    const auto later = some_time_later(random, one, plan_before);
    if (!later) return;
    ++bench.counts.used["with: history"];
    if (random.chance(0.4)) {
      const Case kept = with_earlier_plan(*later, plan_before);
      ++bench.counts.used["with: --keep"];
      ask(accepted_run("plan", {"--format", "json", "--keep", earlier_plan}), kept);
      return;
    }
    if (!ask(accepted_run("plan", {"--format", "json"}), *later)) return;
    if (random.chance(0.3)) ask(any_command(random, *later, plan_before), *later);
    if (!random.chance(0.4)) return;
    const Planned again = plan(bench, *later);
    if (again.status() == "planned") ask_later(*later, again.json);
  }
};

/// The words of a map's keys that users choose themselves: ids, days and months.
bool names_by_user(const std::string& key) {
  return key == "hours" || key == "seasons" || key == "products" || key == "schedules" || key == "sources";
}

void count(const Tree& tree, const std::string& path, Counts& counts) {
  for (const Tree& child : tree.children) {
    const bool is_key = !child.key.empty() && !names_by_user(tree.key);
    const std::string at = is_key ? path + (path.ends_with(": ") ? "" : " / ") + child.key : path;
    if (is_key) ++counts.used[at];
    if (child.key == "shape") ++counts.used["shape: " + child.text];
    if (child.key == "schedule") ++counts.used["schedule: " + child.text];
    count(child, at, counts);
  }
}

}  // namespace

void count_keys(const Case& one, Counts& counts) {
  for (const auto& [name, tree] : one.trees) {
    const bool order = name.starts_with("order");
    count(tree, order ? "key of the order: " : name == "shop.yaml" ? "key of the shop: " : "key of a finish file: ", counts);
  }
}

std::vector<Find> examine(const Case& one, Bench& bench) {
  Examiner examiner{bench, Random(one.seed, 1)};
  ++bench.counts.cases;
  if (!examiner.ask(check_sees_all(), one)) return examiner.finds;
  const Planned planned = plan(bench, one);
  Random& random = examiner.random;
  // Each order is asked some things only: many orders find more in an hour than many questions of few.
  if (random.chance(0.7)) examiner.ask(any_command(random, one, planned.json), one);
  if (planned.status() == "planned" && random.chance(0.7)) examiner.ask_later(one, planned.json);
  if (planned.run.status != 2 && random.chance(0.4)) examiner.ask_relation(one);
  if (planned.status() == "impossible" && random.chance(0.05)) {  // a refusal is asked in every way
    for (const Relation& relation : relations()) examiner.ask(relation.probe, one);
  }
  return examiner.finds;
}

std::vector<Find> examine_relation(const Case& one, Bench& bench, const std::string& name) {
  Examiner examiner{bench, Random(one.seed, 1)};
  ++bench.counts.cases;
  for (const Relation& relation : relations()) {
    if (relation.name == name) examiner.ask(relation.probe, one);
  }
  return examiner.finds;
}

std::vector<Find> examine_mutants(const Case& one, Bench& bench, int mutations) {
  const auto files = files_of(one);
  std::vector<Find> finds;
  for (int i = 0; i < mutations; ++i) {
    Random random(one.seed, 1000 + static_cast<std::uint64_t>(i));
    auto changed = files;
    std::string& text = std::next(changed.begin(), static_cast<std::ptrdiff_t>(random.below(changed.size())))->second;
    text = mutated(random, text);
    const std::string command = random.chance(0.02) ? "plan" : "check";
    const Probe probe = [command](const Case& mutant, Bench& at) {
      return complaint_of_mutant(at.run_mutant(mutant.tables, with_orders(command, mutant)));
    };
    Case mutant{one.seed, {}, std::move(changed), one.orders, one.from};
    auto complaint = probe(mutant, bench);
    if (complaint) finds.push_back({*std::move(complaint), std::move(mutant), probe});
  }
  return finds;
}

}  // namespace coatday::soak
