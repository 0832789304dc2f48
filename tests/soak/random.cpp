#include "tests/soak/random.h"

namespace coatday::soak {

namespace {

// SplitMix64, which is in the public domain (from memory).
constexpr std::uint64_t stride = 0x9E3779B97F4A7C15U;

std::uint64_t mixed(std::uint64_t z) {
  z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
  z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
  return z ^ (z >> 31U);
}

}  // namespace

// Mixed, since a seed that is the next one's by a stride would draw the same a step later.
Random::Random(std::uint64_t seed, std::uint64_t stream) : state_(mixed(mixed(seed + stride) + stream)) {}

std::uint64_t Random::next() { return mixed(state_ += stride); }

int Random::between(int least, int most) { return least + static_cast<int>(below(static_cast<std::size_t>(most - least) + 1)); }

std::size_t Random::below(std::size_t count) { return static_cast<std::size_t>(next() % count); }

bool Random::chance(double share) { return static_cast<double>(next() >> 11U) < share * static_cast<double>(1ULL << 53U); }

}  // namespace coatday::soak
