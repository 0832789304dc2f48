#include "cli/world.h"

#include <unistd.h>

#include <cstdlib>
#include <system_error>

namespace coatday::cli {

namespace fs = std::filesystem;

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

World this_machine() {
  const auto variable = [](const char* name) {
    const char* value = std::getenv(name);
    return std::string(value == nullptr ? "" : value);
  };
  std::error_code ignored;
  const fs::path program = fs::read_symlink("/proc/self/exe", ignored);
  World world;
  world.read = input::read_from_disk();
  world.schedules = find_schedules(variable("COATDAY_SCHEDULES"), program, [](const fs::path& path) {
    std::error_code error;
    return fs::is_directory(path, error);
  });
  world.now = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
  world.terminal = isatty(STDOUT_FILENO) == 1;
  world.no_color = !variable("NO_COLOR").empty();
  return world;
}

}  // namespace coatday::cli
