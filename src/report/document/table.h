#pragma once
// Columns side by side, never wider than the page.

#include "report/document/lines.h"

namespace coatday::report {

struct Column {
  Text title;
  Align align = Align::left;
};

struct Table {
  std::vector<Column> columns;
  std::vector<std::vector<Text>> rows;  ///< as many cells as there are columns
};

/// The widest cell of each column, its title included.
[[nodiscard]] std::vector<int> natural_widths(const Table&);
/// Titles (none when all are empty), then the rows, `indent` from the left. Left-aligned columns give way and wrap when the page is narrow.
[[nodiscard]] Lines layout(const Table&, int indent, const Look&);
/// The same with given widths.
[[nodiscard]] Lines layout(const Table&, const std::vector<int>& widths, int indent);

inline constexpr int column_gap = 2;

}  // namespace coatday::report
