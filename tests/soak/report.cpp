#include <fmt/format.h>

#include <algorithm>

#include "tests/soak/soak.h"

namespace coatday::soak {
namespace {

using Table = std::map<std::string, std::uint64_t>;

std::string rows(const std::string& title, const Table& table, std::size_t most = 1000) {
  if (table.empty()) return "";
  std::vector<std::pair<std::string, std::uint64_t>> sorted(table.begin(), table.end());
  std::stable_sort(sorted.begin(), sorted.end(), [](const auto& a, const auto& b) { return a.second > b.second; });
  std::string text = "\n" + title + "\n";
  for (std::size_t i = 0; i < std::min(most, sorted.size()); ++i) text += fmt::format("{:>9}  {}\n", sorted[i].second, sorted[i].first);
  return text;
}

/// What this soak ought to use: the keys of the sample that holds them all, and all schedules.
Table expected(const Known& known, const std::filesystem::path& every_key) {
  Counts all;
  Case sample;
  for (const auto& [file, as] : {std::pair{"order.yaml", "order.yaml"}, {"shop.yaml", "shop.yaml"}, {"label.yaml", "label.yaml"}})
    sample.trees[as] = read_yaml(every_key / file);
  count_keys(sample, all);
  for (const auto& ids : {known.wood, known.metal})
    for (const std::string& id : ids) ++all.used["schedule: " + id];
  std::erase_if(all.used, [](const auto& one) { return one.first.starts_with("schedule: our-"); });
  return all.used;
}

std::string never_used(const Table& used, const Table& should) {
  std::string text;
  for (const auto& [name, count] : should)
    if (!used.contains(name)) text += "           " + name + "\n";
  return text.empty() ? "\nEvery key of samples/every-key and every schedule was used.\n" : "\nNever used\n" + text;
}

std::string finds(const Outcome& outcome) {
  std::string text;
  for (const auto& [name, kind] : outcome.kinds) {
    text += fmt::format("{:>9}  {}: {}\n           cases", kind.count, name, kind.what.substr(0, kind.what.find('\n')));
    std::size_t shown = 0;
    for (const std::uint64_t seed : kind.seeds)
      if (++shown <= 8) text += fmt::format(" {}", seed);
    text += (shown > 8 ? " ..." : "") + std::string(kind.folder.empty() ? "\n" : "; the first, shrunk: " + kind.folder + "\n");
  }
  return text.empty() ? "" : "\nFinds, by kind\n" + text;
}

}  // namespace

std::string report(const Outcome& outcome, const Settings& settings, const Known& known, const std::filesystem::path& every_key) {
  const Counts& counts = outcome.counts;
  std::string text = rows("Used so many times", counts.used) + never_used(counts.used, expected(known, every_key));
  text += rows("Exit 2 for files that ought to have no mistake, and why", counts.refusals, 12);
  text += rows("Counted, and no finds", counts.notes);
  text += rows("Runs over orders", counts.orders) + rows("Runs over mutated files", counts.mutants) + finds(outcome);
  text += fmt::format("\nSeeds {} to {}; again one of them: tests/soak.sh --case SEED\n", settings.seed,
                      settings.seed + std::max<std::uint64_t>(counts.cases, 1) - 1);
  text += fmt::format("Processor time {:.0f} s; {} runs above {:.0f} s; the slowest took {:.1f} s: {}\n", counts.seconds, counts.above_slow,
                      slow_seconds, counts.slowest, counts.slowest_run);
  return text + fmt::format("{} orders, {} mutations, {} finds\n", counts.cases, counts.mutations, outcome.finds());
}

}  // namespace coatday::soak
