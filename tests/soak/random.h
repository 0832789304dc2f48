#pragma once
// Random draws that are the same on every machine for a seed.

#include <cstdint>
#include <string>
#include <vector>

namespace coatday::soak {

class Random {
 public:
  explicit Random(std::uint64_t seed, std::uint64_t stream = 0);

  [[nodiscard]] std::uint64_t next();
  [[nodiscard]] int between(int least, int most);
  [[nodiscard]] std::size_t below(std::size_t count);
  [[nodiscard]] bool chance(double share);
  [[nodiscard]] std::string one_of(const std::vector<std::string>& words) { return words[below(words.size())]; }

 private:
  std::uint64_t state_;
};

}  // namespace coatday::soak
