#pragma once
// How a finish is lived with, in words for people who bought the piece. Inside this room only.

#include <string>
#include <vector>

#include "finish/product.h"

namespace coatday::report {

/// For what lies on top. Common practice, no source; the label of the finish overrules it.
[[nodiscard]] std::vector<std::string> care_words(const finish::Product& top);

}  // namespace coatday::report
