#include "report/document/table_lines.h"

#include <fmt/core.h>

#include <algorithm>

#include "report/document/phrase_text.h"
#include "report/document/table.h"

namespace coatday::report {
namespace {

/// Which columns of a table stand beside each other: some at its left, and a run of others.
struct Part {
  std::size_t heads;
  std::size_t first, count;
};

Text title_of(const Column& column) { return text_of(column.title, Mark::faint); }

TextTable part_of(const Table& table, const Table::Group& group, std::size_t rows, const Part& part) {
  TextTable text;
  const auto for_each_column = [&part](const auto& use) {
    for (std::size_t i = 0; i < part.heads; ++i) use(i);
    for (std::size_t i = part.first; i < part.first + part.count; ++i) use(i);
  };
  for_each_column([&](std::size_t i) { text.columns.push_back({title_of(table.columns[i]), table.columns[i].align}); });
  for (std::size_t r = 0; r < rows; ++r) {
    const Table::Row& row = group.rows[r];
    text.rows.emplace_back();
    if (!row.cells.empty()) for_each_column([&](std::size_t i) { text.rows.back().push_back(text_of(row.cells.at(i))); });
    text.details.emplace_back();
    for (const Phrase& detail : row.details) text.details.back().push_back(text_of(detail));
  }
  return text;
}

int narrow_width(const Column& column) {
  constexpr int least = 6;  // "28 Feb"
  constexpr int most = 12;
  const Text title = title_of(column);
  for (int width = least; width < most; ++width) {
    if (wrap(title, width).size() <= 2 && longest_word(title) <= width) return width;
  }
  return most;
}

// What stands at the left of narrow columns may take about half of the page.
std::vector<int> head_widths(const TextTable& heads, const TextStyle& style) {
  std::vector<int> widths = natural_widths(heads);
  for (std::size_t i = 0; i < widths.size(); ++i) widths[i] = std::min(widths[i], i == 0 ? style.columns / 4 : style.columns * 3 / 10);
  return widths;
}

// As many narrow columns as fit, then the others below them, beside the same heads.
Lines in_parts(const Table& table, const Table::Group& group, std::size_t heads, int indent, const TextStyle& style) {
  const std::vector<int> left = head_widths(part_of(table, group, group.rows.size(), {heads, 0, 0}), style);
  int room = style.columns - indent + column_gap;
  for (const int width : left) room -= width + column_gap;
  Lines lines;
  for (Part part{heads, heads, 0}; part.first < table.columns.size(); part = {heads, part.first + part.count, 0}) {
    std::vector<int> widths = left;
    for (int used = 0; part.first + part.count < table.columns.size(); ++part.count) {
      const int width = narrow_width(table.columns[part.first + part.count]);
      used += width + column_gap;
      if (part.count > 0 && used > room) break;
      widths.push_back(width);
    }
    if (part.first > heads) append(lines, {"", spaces(indent) + Text("and then", Mark::faint)});
    append(lines, layout(part_of(table, group, group.rows.size(), part), widths, indent, style));
  }
  return lines;
}

Lines group_lines(const Table& table, const Table::Group& group, int indent, const TextStyle& style) {
  const auto narrow = std::find_if(table.columns.begin(), table.columns.end(), [](const Column& column) { return column.narrow; });
  const auto heads = static_cast<std::size_t>(narrow - table.columns.begin());
  if (narrow != table.columns.end()) return in_parts(table, group, heads, indent, style);
  const auto first = [&](std::size_t rows) { return layout(part_of(table, group, rows, {table.columns.size(), 0, 0}), indent, style); };
  std::size_t shown = group.rows.size();
  if (table.most_lines > 0) shown = std::min(shown, table.most_lines);
  while (table.most_lines > 0 && shown > 0 && first(shown).size() > table.most_lines) --shown;
  Lines lines = shown > 0 ? first(shown) : Lines{};
  if (shown < group.rows.size()) append(lines, hang(spaces(indent), fmt::format("and {} more", group.rows.size() - shown), style));
  return lines;
}

}  // namespace

Lines table_lines(const Table& table, int indent, const TextStyle& style) {
  Lines lines;
  for (const Table::Group& group : table.groups) {
    if (!group.title.empty()) append(lines, hang(spaces(indent), text_of(group.title), style));
    append(lines, group_lines(table, group, group.title.empty() ? indent : indent + 2, style));
  }
  return lines;
}

}  // namespace coatday::report
