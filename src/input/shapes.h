#pragma once
// Sizes of parts, by shape.

#include <string_view>

#include "input/fields.h"
#include "piece/shape.h"

namespace coatday::input {

/// The keys of a part's sizes, which depend on its shape. Empty for an unknown shape.
[[nodiscard]] Keys shape_keys(std::string_view shape_word);
[[nodiscard]] const Keys& shape_words();
/// Needs a known shape word. Impossible sizes are mistakes.
[[nodiscard]] piece::Shape read_shape(std::string_view shape_word, const Fields&, Mistakes&);

}  // namespace coatday::input
