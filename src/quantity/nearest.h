#pragma once
// The word that somebody probably meant.

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace coatday {

/// The candidate with the smallest edit distance, if it is close enough to be a slip of the hand.
[[nodiscard]] std::optional<std::string> nearest_word(std::string_view typed, std::span<const std::string> candidates);

/// So many candidates, the smallest edit distance first, however far.
[[nodiscard]] std::vector<std::string> nearest_words(std::string_view typed, std::span<const std::string> candidates, std::size_t count);

}  // namespace coatday
