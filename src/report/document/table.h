#pragma once
// Columns side by side, never wider than the page.

#include "report/document/lines.h"

namespace coatday::report {

struct TextColumn {
  Text title;
  Align align = Align::left;
};

struct TextTable {
  std::vector<TextColumn> columns;
  std::vector<std::vector<Text>> rows;          ///< as many cells as there are columns, or none
  std::vector<std::vector<Text>> details = {};  ///< of each row: lines below it
};

/// The widest cell of each column, its title included.
[[nodiscard]] std::vector<int> natural_widths(const TextTable&);
/// Titles (none when all are empty), then the rows, `indent` from the left. Left-aligned columns give way and wrap when the page is narrow.
/// A row's details stand below it, a little to the right of its first cell.
[[nodiscard]] Lines layout(const TextTable&, int indent, const TextStyle&);
/// The same with given widths.
[[nodiscard]] Lines layout(const TextTable&, const std::vector<int>& widths, int indent, const TextStyle&);

inline constexpr int column_gap = 2;

}  // namespace coatday::report
