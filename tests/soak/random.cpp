#include "tests/soak/random.h"

namespace coatday::soak {

Random::Random(std::uint64_t seed, std::uint64_t stream) : state_(seed * 0x9E3779B97F4A7C15U + stream * 0xD1B54A32D192ED03U) {}

// SplitMix64, by Sebastiano Vigna, in the public domain (from memory).
std::uint64_t Random::next() {
  state_ += 0x9E3779B97F4A7C15U;
  std::uint64_t z = state_;
  z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
  z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
  return z ^ (z >> 31U);
}

int Random::between(int least, int most) { return least + static_cast<int>(below(static_cast<std::size_t>(most - least) + 1)); }

std::size_t Random::below(std::size_t count) { return static_cast<std::size_t>(next() % count); }

bool Random::chance(double share) { return static_cast<double>(next() >> 11U) < share * static_cast<double>(1ULL << 53U); }

}  // namespace coatday::soak
