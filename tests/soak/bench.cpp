#include "tests/soak/bench.h"

#include <fmt/format.h>

#include <algorithm>
#include <fstream>
#include <set>

namespace coatday::soak {
namespace {

void add_all(std::map<std::string, std::uint64_t>& to, const std::map<std::string, std::uint64_t>& from) {
  for (const auto& [name, count] : from) to[name] += count;
}

std::string ending(const Run& run) { return run.signal != 0 ? fmt::format("signal {}", run.signal) : fmt::format("exit {}", run.status); }

/// Hour by hour, the air is nearly all of a plan.
bool without_air(int depth, nlohmann::json::parse_event_t event, const nlohmann::json& key) {
  static const std::set<std::string> large{"air", "surfaces", "finishes"};
  return depth != 1 || event != nlohmann::json::parse_event_t::key || !large.contains(key.get<std::string>());
}

}  // namespace

void Counts::add(const Counts& other) {
  add_all(orders, other.orders);
  add_all(mutants, other.mutants);
  add_all(used, other.used);
  add_all(refusals, other.refusals);
  add_all(notes, other.notes);
  cases += other.cases;
  mutations += other.mutations;
  seconds += other.seconds;
  above_slow += other.above_slow;
  if (other.slowest > slowest) {
    slowest = other.slowest;
    slowest_run = other.slowest_run;
  }
}

void Bench::lay_out(const std::map<std::string, std::string>& files) {
  if (there.empty()) write({}, folder);
  for (const auto& [name, text] : there)
    if (!files.contains(name)) std::filesystem::remove(folder / name);
  for (const auto& [name, text] : files) {
    const auto known = there.find(name);
    if (known == there.end() || known->second != text) std::ofstream(folder / name, std::ios::binary) << text;
  }
  there = files;
}

Run Bench::run(const Case& one, const std::vector<std::string>& arguments) {
  lay_out(files_of(one));
  Run run = program.run(folder, arguments);
  ++counts.orders[ending(run)];
  ++counts.used["command: " + arguments.front()];
  counts.seconds += run.seconds;
  if (run.seconds > slow_seconds) {
    ++counts.above_slow;
    ++counts.notes[fmt::format("above {:.0f} s: case {}, {:.1f} s: {}", slow_seconds, one.seed, run.seconds, typed(arguments))];
  }
  if (run.seconds > counts.slowest) {
    counts.slowest = run.seconds;
    counts.slowest_run = fmt::format("case {}: {}", one.seed, typed(arguments));
  }
  return run;
}

Run Bench::run_mutant(const std::map<std::string, std::string>& files, const std::vector<std::string>& arguments) {
  lay_out(files);
  Run run = program.run(folder, arguments);
  ++counts.mutants[ending(run)];
  ++counts.mutations;
  counts.seconds += run.seconds;
  return run;
}

std::vector<std::string> with_orders(const std::string& command, const Case& one, std::vector<std::string> more) {
  std::vector<std::string> all{command};
  if (command == "air") all.emplace_back("shop.yaml");
  all.insert(all.end(), one.orders.begin(), one.orders.end());
  if (command != "check" && command != "area") all.insert(all.end(), {"--from", one.from});
  all.insert(all.end(), more.begin(), more.end());
  return all;
}

nlohmann::json Planned::result(const char* key) const {
  const auto of_plan = json.find("result");
  if (of_plan == json.end() || !of_plan->is_object()) return nullptr;
  const auto found = of_plan->find(key);
  return found == of_plan->end() ? nlohmann::json() : *found;
}

std::string Planned::status() const {
  const nlohmann::json told = result("status");
  return told.is_string() ? told.get<std::string>() : "";
}

Planned plan(Bench& bench, const Case& one, std::vector<std::string> more) {
  constexpr std::size_t most_remembered = 4;
  more.insert(more.end(), {"--format", "json"});
  auto& known = bench.remembered;
  const auto same = std::find_if(known.begin(), known.end(), [&](const Remembered& r) { return r.at == one && r.more == more; });
  if (same != known.end()) return same->planned;
  Planned planned{bench.run(one, with_orders("plan", one, more)), {}, {}};
  planned.complaint = complaint_of(planned.run);
  planned.json = nlohmann::json::parse(planned.run.out, without_air, false);
  planned.run.out.clear();
  if (known.size() >= most_remembered) known.erase(known.begin());
  known.push_back({one, more, planned});
  return planned;
}

}  // namespace coatday::soak
