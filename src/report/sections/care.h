#pragma once
// How a finish is lived with, in words for people who bought the piece.

#include <string>
#include <vector>

#include "finish/product.h"

namespace coatday::report {

/// For what lies on top. Common practice, no source; the label of the finish overrules it.
[[nodiscard]] std::vector<std::string> care_text(const finish::Product& top);

}  // namespace coatday::report
