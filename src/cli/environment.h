#pragma once
// What a command may know of the machine that it runs on. Tests make their own.

#include <atomic>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>

#include "input/read_file.h"
#include "planner/planner.h"

namespace coatday::cli {

struct Environment {
  input::ReadFile read;
  std::optional<std::filesystem::path> schedules;  ///< the directory of shipped finishes
  Instant now;
  /// Plans a job; a test may put a planner with a fault in its place.
  std::function<tl::expected<planner::FinishedPlan, planner::Faults>(const job::Job&, const job::Request&)> finish_plan =
      planner::finish_plan;
  bool terminal = false;  ///< output goes to one
  bool no_color = false;  ///< NO_COLOR is set and not empty
  /// Shows one line in place of the one before, while people wait; null where nobody looks. An empty line takes it away.
  std::function<void(const std::string&)> say;
  /// From now on Ctrl-C raises the flag instead of ending the program; a second one ends it. Null: never interrupted.
  std::function<const std::atomic<bool>*()> interruptible;
};

/// The first that exists: what COATDAY_SCHEDULES says; installed, ../share/coatday/schedules from the program; else schedules/ of the source
/// tree, one or two directories above the program's own.
[[nodiscard]] std::optional<std::filesystem::path> find_schedules(const std::string& from_environment, const std::filesystem::path& program,
                                                                  const std::function<bool(const std::filesystem::path&)>& is_directory);

/// The machine as it is.
[[nodiscard]] Environment this_machine();

}  // namespace coatday::cli
