#pragma once
// Files for tests: from memory, or from the tests' own folders.

#include <fstream>
#include <iterator>
#include <map>
#include <optional>
#include <string>

#include "input/open.h"
#include "tests/support/source_dir.h"

namespace coatday::input {

using Folder = std::map<std::string, std::string>;

inline std::string tests_dir() { return source_dir() + "/tests/input/"; }

inline std::optional<std::string> slurp(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  if (!file) return std::nullopt;
  return std::string(std::istreambuf_iterator<char>(file), {});
}

inline FileText on_disk(const std::filesystem::path& path) {
  auto text = slurp(path);
  return text ? FileText(*std::move(text)) : tl::make_unexpected(std::string());
}

/// Files in memory; the others come from tests/input/common/, where a small good order stands beside its shop and finishes.
inline ReadFile from(Folder folder) {
  return [folder = std::move(folder)](const std::filesystem::path& path) -> FileText {
    const auto at = folder.find(path.string());
    return at == folder.end() ? on_disk(tests_dir() + "common/" + path.string()) : at->second;
  };
}

/// All mistakes as they are printed; empty where there are none.
inline std::string printed(const std::vector<Diagnostic>& mistakes) {
  std::string all;
  for (const Diagnostic& mistake : mistakes) all += to_text(mistake) + "\n";
  return all;
}

template <class Opening>
std::string printed(const Opening& opening) {
  return opening ? "" : printed(opening.error());
}

inline std::string mistakes_of(Folder folder) { return printed(open_orders({"order.yaml"}, "schedules", from(std::move(folder)))); }

}  // namespace coatday::input
