#pragma once
// Rows of a file in words: "rows 12-15, 18 and 30-41".

#include <string>
#include <vector>

namespace coatday::climate {

/// Of line numbers in any order; the many are cut: "rows 12-15, 18, 30-41 and 120 more". Rows are counted as the lines of the file.
[[nodiscard]] std::string rows_text(std::vector<int> lines);

}  // namespace coatday::climate
