#pragma once
// The sizes of a part in words.

#include <string>

#include "piece/shape.h"
#include "quantity/text.h"

namespace coatday::report::page {

/// "1676 x 762 x 29 mm" in the reader's units.
[[nodiscard]] std::string size_text(const piece::Shape&, Units);

}  // namespace coatday::report::page
