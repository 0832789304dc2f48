#include "tests/soak/probes.h"

#include <fmt/format.h>

#include <cctype>

namespace coatday::soak {

namespace {

/// The first plain words of a mistake, "an-order-file-needs": a shrunk case keeps the mistake, not just the refusal.
std::string sort_of(const std::string& mistakes) {
  constexpr std::size_t most_words = 6;
  const std::size_t at = mistakes.find("error: ");
  std::string sort, word;
  std::size_t words = 0;
  for (std::size_t i = at == std::string::npos ? 0 : at + 7; i < mistakes.size() && mistakes[i] != '\n' && words < most_words; ++i) {
    if (std::islower(static_cast<unsigned char>(mistakes[i])) != 0) {
      word += mistakes[i];
    } else if (!word.empty()) {
      sort += (sort.empty() ? "" : "-") + word;
      word.clear();
      ++words;
    }
  }
  return sort;
}

}  // namespace

Probe sound_run(const std::string& command, const std::vector<std::string>& more) {
  return [command, more](const Case& one, Bench& bench) { return complaint_of(bench.run(one, with_orders(command, one, more))); };
}

Probe check_sees_all() {
  return [](const Case& one, Bench& bench) -> std::optional<Complaint> {
    const Run checked = bench.run(one, with_orders("check", one));
    if (auto found = complaint_of(checked)) return found;
    const Planned planned = plan(bench, one);
    if (planned.complaint) return planned.complaint;
    if (checked.status == 2) ++bench.counts.refusals[checked.err.substr(0, checked.err.find('\n'))];
    if (checked.status == 2 || planned.run.status != 2) return std::nullopt;
    return Complaint{"check-blind", "check finds no mistake, plan does: " + planned.run.err.substr(0, 300), typed(planned.run.arguments)};
  };
}

Probe accepted_run(const std::string& command, const std::vector<std::string>& more) {
  return [command, more](const Case& one, Bench& bench) -> std::optional<Complaint> {
    const Run run = bench.run(one, with_orders(command, one, more));
    if (auto found = complaint_of(run)) return found;
    if (run.status != 2) return std::nullopt;
    return Complaint{"own-history-refused-" + sort_of(run.err), run.err.substr(0, 300), typed(run.arguments)};
  };
}

Probe any_command(Random& random, const Case& one, const nlohmann::json& plan) {
  const auto us = [&random](std::vector<std::string> more) {
    if (random.chance(0.3)) more.insert(more.end(), {"--units", random.one_of({"us", "metric"})});
    return more;
  };
  const std::string format = random.one_of({"text", "json"}), table = random.one_of({"text", "csv"});
  switch (random.between(0, 13)) {
    case 0:
      return sound_run("page", us({"-o", "plan.html", "--force"}));
    case 1:
      return sound_run("sheet", us({}));
    case 2:
      return sound_run("calendar", {"--format", random.one_of({"ics", "csv"})});
    case 3:
      return sound_run("buy", us({"--format", table}));
    case 4:
      return sound_run("quote", us({"--format", format}));
    case 5:
      return sound_run("card", us({}));
    case 6: {
      const auto& events = plan.is_object() ? plan.value("events", nlohmann::json::array()) : nlohmann::json::array();
      if (events.empty()) return sound_run("why");
      return sound_run("why", {events[random.below(events.size())].value("id", "")});
    }
    case 7:
      return sound_run("area", us({"--format", table}));
    case 8:
      return sound_run("air", us({"--format", random.one_of({"text", "json", "csv"}), "--days", std::to_string(random.between(1, 9))}));
    case 9:
      return sound_run("wood", us({"--format", format}));
    case 10:
      return random.chance(0.5) ? sound_run("what-if", {"--set", "people=3"}) : sound_run("what-if", {"--format", format});
    case 11:
      if (!one.trees.contains("label.yaml")) return sound_run("check", {"--strict"});
      return [own = random.one_of({"finishes", "schedules"})](const Case& c, Bench& bench) {
        return c.trees.contains("label.yaml") ? complaint_of(bench.run(c, {own, "--own", "label.yaml"})) : std::nullopt;
      };
    default:
      return sound_run("plan", us({"--colour", random.one_of({"always", "never"})}));
  }
}

}  // namespace coatday::soak
