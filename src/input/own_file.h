#pragma once
// Whether a file that another file names is one of ours. Nothing of any other file is shown: it may hold what is nobody's business.

#include <string_view>

#include "input/fields.h"

namespace coatday::input {

/// Whether a line of the text begins with one of the keys and a colon. The text need not be sound.
[[nodiscard]] bool has_a_key(std::string_view text, const Keys& keys);

}  // namespace coatday::input
