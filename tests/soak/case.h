#pragma once
// One case of the soak: the files of a shop and its orders, and from when they are planned.

#include <cstdint>
#include <filesystem>
#include <map>
#include <string>
#include <vector>

#include "tests/soak/tree.h"

namespace coatday::soak {

struct Case {
  std::uint64_t seed = 0;
  std::map<std::string, Tree> trees;          ///< the YAML files, by name
  std::map<std::string, std::string> tables;  ///< all other files, by name
  std::vector<std::string> orders;            ///< names of the files of the orders
  std::string from;                           ///< "2027-01-11 08:00"

  bool operator==(const Case&) const = default;
};

/// Every file as text.
[[nodiscard]] std::map<std::string, std::string> files_of(const Case&);
/// Empties the folder and writes the files into it.
void write(const std::map<std::string, std::string>& files, const std::filesystem::path& folder);

/// What the generator may name: schedules, with what they are for, and products.
struct Known {
  std::vector<std::string> wood, metal;  ///< ids of schedules
  std::vector<std::string> products;
};

[[nodiscard]] Known known_finishes(const std::filesystem::path& schedules);
/// The same case for the same seed, whatever has been made before.
[[nodiscard]] Case make_case(std::uint64_t seed, const Known&);

}  // namespace coatday::soak
