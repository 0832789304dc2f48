#pragma once
// From a file's text to values. YAML lets much pass that is surely a slip; what the project's files do not need is refused here.

#include <optional>

#include "input/mistakes.h"
#include "input/value.h"

namespace coatday::input {

inline constexpr std::size_t deepest = 32;  ///< lists and maps within each other

/// The file's value, or nothing and at least one mistake. Refused: what is no text (find_mistake); anchors, aliases and tags; too deep;
/// keys given twice, keys that are no text, empty values; a second document; unclosed quotes; values that run on to the next line.
[[nodiscard]] std::optional<Value> read_document(const Source&, Mistakes&);

}  // namespace coatday::input
