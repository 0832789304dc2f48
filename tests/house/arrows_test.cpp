// The arrows of the house: they point down the list of src/CMakeLists.txt, and every #include follows one.

#include <gtest/gtest.h>

#include <functional>

#include "tests/house/house.h"

namespace coatday::house {
namespace {

const Room* find(const std::vector<Room>& rooms, const std::string& path) {
  for (const Room& room : rooms) {
    if (room.path == path) return &room;
  }
  return nullptr;
}

bool may_include(const Room& room, const std::string& other) {
  return room.path == other || std::count(room.links.begin(), room.links.end(), other) > 0;
}

TEST(House, ArrowsPointDown) {
  std::set<std::string> above;
  for (const Room& room : rooms()) {
    for (const std::string& link : room.links) EXPECT_TRUE(above.count(link)) << room.path << " links " << link << ", which comes later";
    above.insert(room.path);
  }
  EXPECT_GT(above.size(), 20U);
}

TEST(House, EveryIncludeFollowsAnArrow) {
  const std::vector<Room> all = rooms();
  int seen = 0;
  for (const Source& source : sources()) {
    const Room* room = find(all, room_of(source.file, all));
    ASSERT_NE(room, nullptr) << source.file << " lives in no room";
    for (const std::string& include : source.includes) {
      ++seen;
      EXPECT_TRUE(may_include(*room, room_of(include, all))) << source.file << " includes " << include;
    }
  }
  EXPECT_GT(seen, 500);
}

TEST(House, NoCircleOfFolders) {
  std::map<std::string, std::set<std::string>> arrows;
  for (const Source& source : sources()) {
    const std::string from = source.file.parent_path().string();
    for (const std::string& include : source.includes) {
      const std::string to = std::filesystem::path(include).parent_path().string();
      if (to != from) arrows[from].insert(to);
    }
  }
  for (const auto& [start, firsts] : arrows) {
    std::set<std::string> reached;
    const std::function<void(const std::string&)> follow = [&](const std::string& folder) {
      if (!reached.insert(folder).second) return;
      for (const std::string& next : arrows[folder]) follow(next);
    };
    for (const std::string& first : std::set<std::string>(firsts)) follow(first);
    EXPECT_FALSE(reached.count(start)) << start << " reaches itself";
  }
}

/// Outside a room with a front door, its door alone is included.
TEST(House, FrontDoorsOnly) {
  const std::map<std::string, std::set<std::string>> doors = {
      {"planner", {"planner/planner.h"}},
      {"checker", {"checker/check.h"}},
      {"solver",
       {"solver/solve.h", "solver/blockers.h", "solver/base/problem.h", "solver/base/monotone_function.h", "solver/base/bounds.h"}},
  };
  for (const Source& source : sources()) {
    for (const std::string& include : source.includes) {
      const std::string house = include.substr(0, include.find('/'));
      const auto door = doors.find(house);
      if (door == doors.end() || source.file.begin()->string() == house) continue;
      EXPECT_TRUE(door->second.count(include)) << source.file << " goes past the front door of " << house << "/: " << include;
    }
  }
}

}  // namespace
}  // namespace coatday::house
