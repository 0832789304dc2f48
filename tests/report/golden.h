#pragma once
// Whole texts kept in files beside the test: UPDATE_GOLDEN=1 writes them anew, and a person reads the difference.

#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <sstream>
#include <string>

#include "tests/support/source_dir.h"

namespace coatday::golden {

inline std::string read(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

/// `name` is relative to tests/.
inline void expect_golden(const std::string& name, const std::string& text) {
  const std::string path = source_dir() + "/tests/" + name;
  if (std::getenv("UPDATE_GOLDEN") != nullptr) std::ofstream(path, std::ios::binary) << text;
  EXPECT_EQ(read(path), text) << "differs from " << name << "; if that is meant, run once with UPDATE_GOLDEN=1";
}

}  // namespace coatday::golden
