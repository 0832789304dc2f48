#include "cli/environment.h"

#include <unistd.h>

#include <charconv>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <system_error>

namespace coatday::cli {

namespace fs = std::filesystem;

namespace {

std::atomic<bool> interrupted{false};
static_assert(std::atomic<bool>::is_always_lock_free, "it is set by a signal handler");

const std::atomic<bool>* catch_interrupt() {
  struct sigaction action {};
  action.sa_handler = [](int) { interrupted = true; };
  action.sa_flags = static_cast<int>(SA_RESETHAND);
  sigaction(SIGINT, &action, nullptr);
  return &interrupted;
}

void show(const std::string& line) {
  std::fprintf(stderr, "\r\033[K%s", line.c_str());
  std::fflush(stderr);
}

/// The clock, or what stands in for it where the same words have to give the same bytes: seconds since 1970 (reproducible-builds.org).
Instant now(const std::string& fixed) {
  std::int64_t seconds = 0;
  const auto [end, error] = std::from_chars(fixed.data(), fixed.data() + fixed.size(), seconds);
  const bool whole = !fixed.empty() && error == std::errc() && end == fixed.data() + fixed.size();
  constexpr std::int64_t furthest = 4'102'444'800;  // 2100
  if (whole && seconds >= 0 && seconds < furthest) return Instant(std::chrono::seconds(seconds));
  return std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
}

}  // namespace

std::optional<fs::path> find_schedules(const std::string& from_environment, const fs::path& program,
                                       const std::function<bool(const fs::path&)>& is_directory) {
  if (!from_environment.empty()) return is_directory(from_environment) ? std::optional<fs::path>(from_environment) : std::nullopt;
  const fs::path directory = program.parent_path();
  for (const char* relative : {"../share/coatday/schedules", "../schedules", "../../schedules"}) {
    const fs::path candidate = (directory / relative).lexically_normal();
    if (is_directory(candidate)) return candidate;
  }
  return std::nullopt;
}

Environment this_machine() {
  const auto variable = [](const char* name) {
    const char* value = std::getenv(name);
    return std::string(value == nullptr ? "" : value);
  };
  std::error_code ignored;
  const fs::path program = fs::read_symlink("/proc/self/exe", ignored);
  Environment environment;
  environment.read = input::read_from_disk();
  environment.schedules = find_schedules(variable("COATDAY_SCHEDULES"), program, [](const fs::path& path) {
    std::error_code error;
    return fs::is_directory(path, error);
  });
  environment.now = now(variable("SOURCE_DATE_EPOCH"));
  environment.terminal = isatty(STDOUT_FILENO) == 1;
  if (isatty(STDERR_FILENO) == 1) environment.say = show;
  environment.interruptible = catch_interrupt;
  environment.no_color = !variable("NO_COLOR").empty();
  return environment;
}

}  // namespace coatday::cli
