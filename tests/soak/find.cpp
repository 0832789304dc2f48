#include "tests/soak/find.h"

#include <fmt/format.h>

#include <csignal>
#include <nlohmann/json.hpp>
#include <regex>

namespace coatday::soak {
namespace {

std::string first_lines(const std::string& text, std::size_t most = 400) { return text.substr(0, most); }

/// "- work-moved: phone call ..." names the check that failed first.
std::string broken_check(const std::string& err) {
  static const std::regex item("(?:^|\n)- ([a-z-]+):");
  std::smatch match;
  return std::regex_search(err, match, item) ? match[1].str() : "unnamed";
}

bool wants_json(const Run& run) {
  const auto& words = run.arguments;
  return std::find(words.begin(), words.end(), "json") != words.end();
}

bool has_sanitizer_report(const std::string& err) {
  return err.find("Sanitizer") != std::string::npos || err.find("runtime error:") != std::string::npos;
}

}  // namespace

std::optional<Complaint> complaint_of(const Run& run) {
  const auto complain = [&run](const std::string& kind, const std::string& what) { return Complaint{kind, what, typed(run.arguments)}; };
  if (has_sanitizer_report(run.err)) return complain("sanitizer", first_lines(run.err));
  if (run.signal == SIGXCPU || run.signal == SIGALRM) return complain("hang", fmt::format("{:.1f} s of processor time", run.seconds));
  if (run.signal != 0) return complain(fmt::format("signal-{}", run.signal), first_lines(run.err));
  if (run.status == 3) return complain("exit-3-" + broken_check(run.err), first_lines(run.err));
  if (run.status > 3) return complain(fmt::format("exit-{}", run.status), first_lines(run.err));
  if (run.megabytes > most_megabytes) return complain("memory", fmt::format("{:.0f} MB", run.megabytes));
  static const std::regex bug("\\bbug\\b", std::regex::icase);
  if (std::regex_search(run.err, bug) || (run.out.size() < 200'000 && std::regex_search(run.out, bug)))
    return complain("says-bug", first_lines(run.err));
  if (run.status == 0 && run.out.empty() && run.arguments.front() != "page")
    return complain("empty-output", "exit 0, and nothing is printed");
  if (run.status < 2 && (run.status == 0 || !run.out.empty()) && wants_json(run) && !nlohmann::json::accept(run.out))
    return complain("bad-json", first_lines(run.out));
  return std::nullopt;
}

std::optional<Complaint> complaint_of_mutant(const Run& run) {
  if (auto found = complaint_of(run)) return found;
  // Of a file that is none of ours nothing is quoted, and no line of it told.
  static const std::regex placed("^[^\\s:][^:\n]*(:\\d+:\\d+|\\.[a-z]+): (error|warning): ");
  if (run.status == 2 && !std::regex_search(run.err, placed)) return Complaint{"no-place", first_lines(run.err), typed(run.arguments)};
  return std::nullopt;
}

}  // namespace coatday::soak
