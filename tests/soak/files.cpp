#include <yaml-cpp/yaml.h>

#include <fstream>

#include "tests/soak/case.h"

namespace coatday::soak {

namespace fs = std::filesystem;

std::map<std::string, std::string> files_of(const Case& one) {
  std::map<std::string, std::string> files = one.tables;
  for (const auto& [name, tree] : one.trees) files[name] = to_yaml(tree);
  return files;
}

void write(const std::map<std::string, std::string>& files, const fs::path& folder) {
  fs::remove_all(folder);
  fs::create_directories(folder);
  for (const auto& [name, text] : files) std::ofstream(folder / name, std::ios::binary) << text;
}

Known known_finishes(const fs::path& schedules) {
  Known known;
  for (const auto& entry : YAML::LoadFile(schedules / "schedules.yaml")["schedules"]) {
    const bool metal = entry.second["suits"].as<std::string>() == "metal";
    (metal ? known.metal : known.wood).push_back(entry.first.as<std::string>());
  }
  for (const auto& entry : YAML::LoadFile(schedules / "products.yaml")["products"]) known.products.push_back(entry.first.as<std::string>());
  return known;
}

}  // namespace coatday::soak
