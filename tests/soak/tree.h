#pragma once
// What stands in a YAML file: a text, a map or a list. A shrinker can take parts out of it.

#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace coatday::soak {

struct Tree {
  enum class Kind { text, map, list };

  Kind kind = Kind::text;
  std::string key;   ///< in the map that it stands in
  std::string text;  ///< of a text
  std::vector<Tree> children;

  bool operator==(const Tree&) const = default;
};

[[nodiscard]] Tree text(std::string);
[[nodiscard]] Tree map();
[[nodiscard]] Tree list(std::vector<Tree> items = {});
[[nodiscard]] Tree list(const std::vector<std::string>& texts);

/// Sets a key of a map, in place of what stands there.
Tree& set(Tree& map, const std::string& key, Tree value);
Tree& set(Tree& map, const std::string& key, const std::string& value);
void remove(Tree& map, const std::string& key);
/// The value of a key, or null.
[[nodiscard]] Tree* find(Tree& map, const std::string& key);
[[nodiscard]] const Tree* find(const Tree& map, const std::string& key);

/// Every value within, the outer before the inner.
void each(Tree& tree, const std::function<void(Tree&)>& visit);
void each(const Tree& tree, const std::function<void(const Tree&)>& visit);

[[nodiscard]] std::string to_yaml(const Tree&);
[[nodiscard]] Tree read_yaml(const std::filesystem::path&);

}  // namespace coatday::soak
