#pragma once
// Runs the built program as a child, with limits on its processor time and memory.

#include <filesystem>
#include <string>
#include <vector>

namespace coatday::soak {

struct Run {
  std::vector<std::string> arguments;
  int status = 0;      ///< as exited; -1 where a signal ended it
  int signal = 0;      ///< that ended it
  double seconds = 0;  ///< of processor time
  double megabytes = 0;
  std::string out{}, err{};
};

struct Program {
  std::filesystem::path file, schedules;

  /// Runs it in the folder. Its output comes by way of two files beside the folder.
  [[nodiscard]] Run run(const std::filesystem::path& folder, const std::vector<std::string>& arguments) const;
};

inline constexpr double hang_seconds = 20, slow_seconds = 10, most_megabytes = 2000;

/// The arguments as one would type them.
[[nodiscard]] std::string typed(const std::vector<std::string>& arguments);

}  // namespace coatday::soak
