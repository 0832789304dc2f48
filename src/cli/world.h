#pragma once
// What a command may know of the machine that it runs on. Tests make their own.

#include <filesystem>
#include <functional>
#include <optional>
#include <string>

#include "input/load.h"

namespace coatday::cli {

struct World {
  input::ReadFile read;
  std::optional<std::filesystem::path> schedules;  ///< the directory of shipped finishes
  Instant now;
  bool terminal = false;  ///< output goes to one
  bool no_color = false;  ///< NO_COLOR is set and not empty
};

/// The first that exists: what COATDAY_SCHEDULES says; installed, ../share/coatday/schedules from the program; else schedules/ of the source
/// tree, one or two directories above the program's own.
[[nodiscard]] std::optional<std::filesystem::path> find_schedules(const std::string& from_environment, const std::filesystem::path& program,
                                                                  const std::function<bool(const std::filesystem::path&)>& is_directory);

/// The machine as it is.
[[nodiscard]] World this_machine();

}  // namespace coatday::cli
