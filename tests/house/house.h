#pragma once
// The rooms of the source tree and their arrows, as src/CMakeLists.txt states them, and the files that live in them.

#include <filesystem>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace coatday::house {

struct Room {
  std::string path;                ///< "planner/tasks"
  std::vector<std::string> links;  ///< rooms that it may include
  bool recurse = false;            ///< its folder's folders belong to it
};

struct Source {
  std::filesystem::path file;         ///< from src/: "planner/tasks/load.h"
  std::vector<std::string> includes;  ///< from src/ as well
  std::vector<std::string> lines;
};

/// In the order in which they are stated.
[[nodiscard]] std::vector<Room> rooms();
/// Every .h and .cpp of src/, by path.
[[nodiscard]] std::vector<Source> sources();
/// The room that a file of src/ belongs to; empty where none does.
[[nodiscard]] std::string room_of(const std::filesystem::path& file, const std::vector<Room>&);
/// The lines of a file; none where it cannot be read.
[[nodiscard]] std::vector<std::string> lines_of(const std::filesystem::path&);
[[nodiscard]] std::filesystem::path root();

}  // namespace coatday::house
