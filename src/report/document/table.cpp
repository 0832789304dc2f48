#include "report/document/table.h"

#include <algorithm>
#include <numeric>
#include <optional>

namespace coatday::report {
namespace {

constexpr int narrowest = 6;

int total(const std::vector<int>& widths) {
  return std::accumulate(widths.begin(), widths.end(), 0) + column_gap * (static_cast<int>(widths.size()) - 1);
}

// The longest word of each column: narrower than this a word is cut.
std::vector<int> word_widths(const TextTable& table) {
  std::vector<int> widths;
  for (const TextColumn& column : table.columns) widths.push_back(std::max(narrowest, longest_word(column.title)));
  for (const auto& row : table.rows) {
    for (std::size_t i = 0; i < row.size(); ++i) widths[i] = std::max(widths[i], longest_word(row[i]));
  }
  return widths;
}

// The widest left-aligned column that is wider than its floor; none when all of them are at it.
std::optional<std::size_t> widest(const TextTable& table, const std::vector<int>& widths, const std::vector<int>& floors) {
  std::optional<std::size_t> found;
  for (std::size_t i = 0; i < widths.size(); ++i) {
    if (table.columns[i].align == Align::right || widths[i] <= floors[i]) continue;
    if (!found || widths[i] > widths[*found]) found = i;
  }
  return found;
}

// Columns give way at spaces first, then within words; as a last resort numbers do too.
std::vector<int> fitting_widths(const TextTable& table, int room) {
  std::vector<int> widths = natural_widths(table);
  const std::vector<int> words = word_widths(table);
  const std::vector<int> cut(widths.size(), narrowest);
  while (total(widths) > room && *std::max_element(widths.begin(), widths.end()) > 1) {
    auto column = widest(table, widths, words);
    if (!column) column = widest(table, widths, cut);
    if (!column) column = static_cast<std::size_t>(std::max_element(widths.begin(), widths.end()) - widths.begin());
    --widths[*column];
  }
  return widths;
}

Lines layout_row(const TextTable& table, const std::vector<Text>& cells, const std::vector<int>& widths, int indent) {
  std::vector<Lines> wrapped;
  std::size_t height = 1;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    wrapped.push_back(wrap(cells[i], widths[i]));
    height = std::max(height, wrapped.back().size());
  }
  Lines lines;
  for (std::size_t row = 0; row < height; ++row) {
    Text line = spaces(indent);
    for (std::size_t i = 0; i < cells.size(); ++i) {
      const Text part = row < wrapped[i].size() ? wrapped[i][row] : Text();
      line += padded(part, widths[i], table.columns[i].align) + spaces(i + 1 < cells.size() ? column_gap : 0);
    }
    lines.push_back(line);
  }
  return lines;
}

}  // namespace

std::vector<int> natural_widths(const TextTable& table) {
  std::vector<int> widths;
  for (const TextColumn& column : table.columns) widths.push_back(std::max(1, column.title.width()));
  for (const auto& row : table.rows) {
    for (std::size_t i = 0; i < row.size(); ++i) widths[i] = std::max(widths[i], row[i].width());
  }
  return widths;
}

Lines layout(const TextTable& table, int indent, const TextStyle& style) {
  return layout(table, fitting_widths(table, style.columns - indent), indent, style);
}

Lines layout(const TextTable& table, const std::vector<int>& widths, int indent, const TextStyle& style) {
  Lines lines;
  std::vector<Text> titles;
  for (const TextColumn& column : table.columns) titles.push_back(column.title);
  const bool titled = std::any_of(titles.begin(), titles.end(), [](const Text& t) { return !t.empty(); });
  if (titled) append(lines, layout_row(table, titles, widths, indent));
  for (std::size_t i = 0; i < table.rows.size(); ++i) {
    const bool cells = !table.rows[i].empty();
    if (cells) append(lines, layout_row(table, table.rows[i], widths, indent));
    if (i >= table.details.size()) continue;
    for (const Text& detail : table.details[i]) append(lines, hang(spaces(cells ? indent + column_gap : indent), detail, style));
  }
  return lines;
}

}  // namespace coatday::report
