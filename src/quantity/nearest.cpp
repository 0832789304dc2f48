#include "quantity/nearest.h"

#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

namespace coatday {
namespace {

constexpr std::size_t longest_word = 64;  // longer texts are no slip of the hand

std::string lower(std::string_view text) {
  std::string out(text);
  for (char& c : out) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return out;
}

// Letters put in, left out, changed, or swapped with a neighbour (optimal string alignment).
std::size_t edit_distance(std::string_view a, std::string_view b) {
  std::vector<std::size_t> before_last(b.size() + 1);
  std::vector<std::size_t> last(b.size() + 1);
  std::vector<std::size_t> row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) last[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t changed = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
      row[j] = std::min({last[j] + 1, row[j - 1] + 1, changed});
      const bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
      if (swapped) row[j] = std::min(row[j], before_last[j - 2] + 1);
    }
    std::swap(before_last, last);
    std::swap(last, row);
  }
  return last[b.size()];
}

}  // namespace

std::optional<std::string> nearest_word(std::string_view typed, std::span<const std::string> candidates) {
  if (typed.empty() || typed.size() > longest_word) return std::nullopt;
  const std::string word = lower(typed);
  const std::size_t allowed = std::max<std::size_t>(1, word.size() / 3);
  std::size_t best = allowed + 1;
  const std::string* found = nullptr;
  for (const std::string& candidate : candidates) {
    if (candidate.size() > longest_word) continue;
    const std::size_t distance = edit_distance(word, lower(candidate));
    const bool something_in_common = distance < std::max(word.size(), candidate.size());
    if (distance < best && something_in_common) {
      best = distance;
      found = &candidate;
    }
  }
  if (found == nullptr) return std::nullopt;
  return *found;
}

std::vector<std::string> nearest_words(std::string_view typed, std::span<const std::string> candidates, std::size_t count) {
  const std::string word = lower(typed.substr(0, longest_word));
  std::vector<std::pair<std::size_t, std::string>> ranked;
  for (const std::string& candidate : candidates)
    ranked.emplace_back(edit_distance(word, lower(candidate.substr(0, longest_word))), candidate);
  std::stable_sort(ranked.begin(), ranked.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<std::string> nearest;
  for (auto& [distance, candidate] : ranked) {
    if (nearest.size() == count) break;
    const bool known = std::find(nearest.begin(), nearest.end(), candidate) != nearest.end();
    if (!known) nearest.push_back(std::move(candidate));  // a word may be known twice
  }
  return nearest;
}

}  // namespace coatday
