#include "tests/house/house.h"

#include <algorithm>
#include <fstream>
#include <regex>
#include <sstream>

#include "tests/support/source_dir.h"

namespace coatday::house {
namespace {

namespace fs = std::filesystem;

std::string text_of(const fs::path& file) {
  std::ostringstream text;
  for (const std::string& line : lines_of(file)) text << line << '\n';
  return text.str();
}

/// "coatday_room(planner/buy ROOMS job planner/tasks PRIVATE fmt::fmt)".
Room room_from(const std::string& call) {
  std::istringstream words(call);
  Room room;
  std::string word, list;
  words >> room.path;
  while (words >> word) {
    if (word == "RECURSE") room.recurse = true;
    if (word == "RECURSE" || word == "ROOMS" || word == "LIBRARIES" || word == "PRIVATE") {
      list = word;
    } else if (list == "ROOMS") {
      room.links.push_back(word);
    }
  }
  return room;
}

bool is_source(const fs::path& file) { return file.extension() == ".h" || file.extension() == ".cpp"; }

}  // namespace

fs::path root() { return source_dir(); }

std::vector<std::string> lines_of(const fs::path& file) {
  std::vector<std::string> lines;
  std::ifstream in(file);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

std::vector<Room> rooms() {
  static const std::regex call(R"(coatday_room\(([^)]*)\))");
  std::vector<Room> found;
  for (const char* file : {"src/CMakeLists.txt", "src/report/CMakeLists.txt", "src/cli/CMakeLists.txt"}) {
    const std::string text = text_of(root() / file);
    for (std::sregex_iterator at(text.begin(), text.end(), call), end; at != end; ++at) found.push_back(room_from((*at)[1]));
  }
  return found;
}

std::vector<Source> sources() {
  static const std::regex include("^#include \"([^\"]+)\"");
  std::vector<Source> found;
  for (const auto& entry : fs::recursive_directory_iterator(root() / "src")) {
    if (!is_source(entry.path())) continue;
    Source source{fs::relative(entry.path(), root() / "src"), {}, lines_of(entry.path())};
    for (const std::string& line : source.lines) {
      std::smatch match;
      if (std::regex_search(line, match, include)) source.includes.push_back(match[1]);
    }
    found.push_back(std::move(source));
  }
  std::sort(found.begin(), found.end(), [](const Source& a, const Source& b) { return a.file < b.file; });
  return found;
}

std::string room_of(const fs::path& file, const std::vector<Room>& rooms) {
  const std::string folder = file.parent_path().string();
  std::string found;
  for (const Room& room : rooms) {
    const bool inside = folder == room.path || (room.recurse && (folder + "/").starts_with(room.path + "/"));
    if (inside && room.path.size() > found.size()) found = room.path;
  }
  return found;
}

}  // namespace coatday::house
