#pragma once
// Collects the mistakes of all files that are being read, so that the user sees all of them at once.

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "input/diagnostic.h"

namespace coatday::input {

class Mistakes {
 public:
  void add(Location where, std::string message);
  /// To see whether something was read without a mistake: the count before and after.
  [[nodiscard]] std::size_t count() const { return count_; }
  /// By file, then line, then column; each once. After the first hundred it says only how many more there are.
  [[nodiscard]] std::vector<Diagnostic> sorted() const;

 private:
  std::vector<Diagnostic> found_;
  std::size_t count_ = 0;
};

/// "unknown product 'sealar'; did you mean 'sealer'?", or the words to choose from where they are few. `in` follows the word: " in a mask".
[[nodiscard]] std::string unknown(std::string_view what, std::string_view typed, const std::vector<std::string>& known,
                                  std::string_view in = {});
/// What is known, for unknown().
template <class T>
std::vector<std::string> keys_of(const std::map<std::string, T>& map) {
  std::vector<std::string> keys;
  for (const auto& [key, value] : map) keys.push_back(key);
  return keys;
}

}  // namespace coatday::input
