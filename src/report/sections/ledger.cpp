#include "report/sections/ledger.h"

#include <fmt/core.h>

#include <algorithm>
#include <map>

#include "report/document/table.h"
#include "report/sections/faces.h"
#include "report/sections/sections.h"
#include "report/words.h"

namespace coatday::report {
namespace {

constexpr int indent = 2;

using Month = date::year_month;

/// What the signs in the cells need by way of explanation.
struct Legend {
  Month month;  ///< of days without one
  bool hole = false;
  bool no_colour = false;
  std::vector<const LedgerRow*> exceptions;
};

std::string month_name(LocalDay day) { return short_date(day).substr(short_date(day).rfind(' ') + 1); }

Month month_of(Instant t, const job::Plan& plan) {
  const year_month_day day(local_day(t, plan.shop.zone));
  return day.year() / day.month();
}

/// Months in which coats go on, with how many.
std::map<Month, int> months(const std::vector<LedgerBlock>& blocks, const job::Plan& plan) {
  std::map<Month, int> all;
  for (const LedgerBlock& block : blocks) {
    for (const LedgerRow& row : block.rows) {
      for (const auto& coat : row.coats) {
        if (coat) ++all[month_of(*coat, plan)];
      }
    }
  }
  return all;
}

/// The month that a bare day is of: that of most coats.
Month usual_month(const std::map<Month, int>& months) {
  const auto fewer = [](const auto& a, const auto& b) { return a.second < b.second; };
  return std::max_element(months.begin(), months.end(), fewer)->first;
}

std::string mark(std::size_t index) { return std::string(1, static_cast<char>('a' + static_cast<int>(index % 26))); }

Text day_cell(Instant t, const job::Plan& plan, Month usual) {
  const LocalDay day = local_day(t, plan.shop.zone);
  const std::string number = fmt::format("{}", static_cast<unsigned>(year_month_day(day).day()));
  return month_of(t, plan) == usual ? number : unbroken(number + " " + month_name(day));
}

Text cell(const LedgerRow& row, std::size_t column, const LedgerBlock& block, const job::Plan& plan, Legend& legend) {
  if (row.coats[column]) return day_cell(*row.coats[column], plan, legend.month);
  if (!block.columns[column].film) {
    legend.no_colour = true;
    return {".", Mark::faint};
  }
  if (row.exception == nullptr) {
    legend.hole = true;
    return {"--", Mark::bad};
  }
  auto found = std::find(legend.exceptions.begin(), legend.exceptions.end(), &row);
  if (found == legend.exceptions.end()) found = legend.exceptions.insert(found, &row);
  return {"--" + mark(static_cast<std::size_t>(found - legend.exceptions.begin())), Mark::caution};
}

// A column is as narrow as its title in two lines allows.
int title_width(const LedgerColumn& column) {
  constexpr int narrowest = 6;  // "28 Feb"
  constexpr int widest = 12;
  const Text title(column.name);
  for (int width = narrowest; width < widest; ++width) {
    if (wrap(title, width).size() <= 2 && longest_word(title) <= width) return width;
  }
  return widest;
}

TextTable head_columns() { return {{{Text("part", Mark::faint)}, {Text("faces", Mark::faint)}}, {}}; }

TextTable part_table(const LedgerBlock& block, const job::Plan& plan) {
  TextTable table = head_columns();
  const job::FaceEntry* last = nullptr;
  for (const LedgerRow& row : block.rows) {
    table.rows.push_back({row.part == last ? Text() : Text(part_words(plan, *row.part)), Text(row.faces)});
    last = row.part;
  }
  return table;
}

// As many coats as fit beside the faces, from `first`.
std::size_t columns_that_fit(const LedgerBlock& block, std::size_t first, int room) {
  std::size_t count = 0;
  int used = 0;
  while (first + count < block.columns.size()) {
    used += title_width(block.columns[first + count]) + column_gap;
    if (count > 0 && used > room) break;
    ++count;
  }
  return count;
}

Lines block_lines(const LedgerBlock& block, const job::Plan& plan, Legend& legend, const TextStyle& style) {
  const TextTable parts = part_table(block, plan);
  const std::vector<int> natural = natural_widths(parts);
  const int part_width = std::min(natural[0], style.columns / 4);
  const int face_width = std::min(natural[1], style.columns * 3 / 10);
  const int room = style.columns - indent - part_width - face_width - column_gap;
  Lines lines;
  for (std::size_t first = 0; first < block.columns.size();) {
    const std::size_t count = columns_that_fit(block, first, room);
    if (first > 0) append(lines, {"", Text("  and then", Mark::faint)});
    TextTable table = parts;
    std::vector<int> widths{part_width, face_width};
    for (std::size_t c = first; c < first + count; ++c) {
      table.columns.push_back({Text(block.columns[c].name, Mark::faint)});
      widths.push_back(title_width(block.columns[c]));
      for (std::size_t r = 0; r < block.rows.size(); ++r) table.rows[r].push_back(cell(block.rows[r], c, block, plan, legend));
    }
    append(lines, layout(table, widths, indent, style));
    first += count;
  }
  return lines;
}

// Without a plan there are no days: what is meant to go on instead.
Lines planned_coats(const job::Plan& plan, const TextStyle& style) {
  TextTable table{{{Text("part", Mark::faint)}, {Text("face", Mark::faint)}, {Text("film coats", Mark::faint), Align::right}}, {}};
  for (const job::FaceEntry& face : plan.faces)
    table.rows.push_back({part_words(plan, face), face.face, masked(face) ? "masked" : fmt::format("{}", face.coats)});
  return layout(table, indent, style);
}

Lines legend_lines(const Legend& legend, const job::Plan& plan, const TextStyle& style) {
  Lines lines;
  if (legend.hole) append(lines, hang(Text("  --  ", Mark::bad), "no coat: this face is left behind", style));
  if (legend.no_colour) append(lines, hang(Text("  .   ", Mark::faint), "no colour here; it adds no film", style));
  for (std::size_t i = 0; i < legend.exceptions.size(); ++i) {
    const LedgerRow& row = *legend.exceptions[i];
    const std::string words = part_words(plan, *row.part) + " " + row.faces + ": " + row.exception->reason;
    append(lines, hang(Text("  --" + mark(i) + " ", Mark::caution), words, style));
  }
  return lines;
}

}  // namespace

Lines ledger(const job::Plan& plan, const TextStyle& style) {
  if (plan.faces.empty()) return {};
  const std::vector<LedgerBlock> blocks = ledger_blocks(plan);
  const bool planned = std::any_of(blocks.begin(), blocks.end(), [](const LedgerBlock& b) { return !b.columns.empty(); });
  const std::map<Month, int> coated = months(blocks, plan);
  const Text title = Text("Faces", Mark::strong) + "  ";
  if (!planned || coated.empty()) {
    Lines lines = hang(title, "as the schedule has them", style);
    append(lines, planned_coats(plan, style));
    return lines;
  }
  Legend legend;
  legend.month = usual_month(coated);
  Lines lines = hang(title,
                     "the day on which each coat goes on, in " + month_name(LocalDay(date::local_days(legend.month / 1))) +
                         (coated.size() > 1 ? " unless said" : ""),
                     style);
  for (std::size_t i = 0; i < blocks.size(); ++i) {
    if (i > 0) lines.emplace_back();
    append(lines, block_lines(blocks[i], plan, legend, style));
  }
  append(lines, legend_lines(legend, plan, style));
  return lines;
}

}  // namespace coatday::report
