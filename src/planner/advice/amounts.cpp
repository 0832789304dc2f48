#include "planner/advice/amounts.h"

#include <algorithm>
#include <iterator>
#include <map>

namespace coatday::planner {

namespace {

constexpr std::size_t most_tries = 8;
constexpr Hours nothing{1};  // gained

class Tries {
 public:
  explicit Tries(const GainOf& gain) : gain_(gain) {}

  [[nodiscard]] bool left() const { return known_.size() < most_tries; }
  /// Beyond the last try nothing counts as gained.
  Hours of(int more) {
    const auto known = known_.find(more);
    if (known != known_.end()) return known->second;
    if (!left()) return Hours(0);
    return known_.emplace(more, gain_(more).value_or(Hours(0))).first->second;
  }
  /// The smallest number above `low` that gains so much, where `high` does.
  int smallest(int low, int high, Hours gain) {
    while (high - low > 1 && left()) {
      const int middle = low + (high - low) / 2;
      (of(middle) >= gain ? high : low) = middle;
    }
    return high;
  }

 private:
  const GainOf& gain_;
  std::map<int, Hours> known_;
};

}  // namespace

std::vector<int> worth_having(int most, Hours least, const GainOf& gain) {
  std::vector<int> doubled;
  for (int more = 1; more <= most && doubled.size() < most_tries; more *= 2) doubled.push_back(more);
  Tries tries(gain);
  if (doubled.empty() || tries.of(doubled.back()) < least) return {};
  Hours best{0};
  for (const int more : doubled) best = std::max(best, tries.of(more));
  const auto smallest = [&](Hours enough) {
    const auto reached = std::find_if(doubled.begin(), doubled.end(), [&](int more) { return tries.of(more) >= enough; });
    return tries.smallest(reached == doubled.begin() ? 0 : *std::prev(reached), *reached, enough);
  };
  const int first = smallest(least);
  if (best < tries.of(first) + least) return {first};
  return {first, smallest(best - nothing)};
}

}  // namespace coatday::planner
