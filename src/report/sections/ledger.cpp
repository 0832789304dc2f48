#include "report/sections/ledger.h"

#include <fmt/core.h>

#include <algorithm>
#include <map>

#include "report/sections/faces.h"
#include "report/sections/ledger_blocks.h"

namespace coatday::report {
namespace {

using Month = date::year_month;

/// What the signs in the cells need by way of explanation on a terminal.
struct Legend {
  Month month;  ///< of days without one
  bool hole = false;
  bool no_colour = false;
  std::vector<const LedgerRow*> exceptions = {};
};

std::string month_name(LocalDay day) { return short_date(day).substr(short_date(day).rfind(' ') + 1); }

Month month_of(Instant t, const Texts& texts) {
  const year_month_day day(local_day(t, texts.zone));
  return day.year() / day.month();
}

/// Months in which coats go on, with how many.
std::map<Month, int> months(const std::vector<LedgerBlock>& blocks, const Texts& texts) {
  std::map<Month, int> all;
  for (const LedgerBlock& block : blocks) {
    for (const LedgerRow& row : block.rows) {
      for (const auto& coat : row.coats) {
        if (coat) ++all[month_of(*coat, texts)];
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

std::string sign(std::size_t index) { return std::string(1, static_cast<char>('a' + static_cast<int>(index % 26))); }

Phrase day_cell(Instant t, Month usual, const Texts& texts) {
  const LocalDay day = local_day(t, texts.zone);
  const std::string number = fmt::format("{}", static_cast<unsigned>(year_month_day(day).day()));
  const std::string full = unbroken(number + " " + month_name(day));
  return on_page(month_of(t, texts) == usual ? number : full, full);
}

Phrase cell(const LedgerRow& row, std::size_t column, const LedgerBlock& block, Legend& legend, const Texts& texts) {
  if (row.coats[column]) return day_cell(*row.coats[column], legend.month, texts);
  if (!block.columns[column].film) {
    legend.no_colour = true;
    return on_page(".", "no colour", Mark::faint);
  }
  if (row.exception == nullptr) {
    legend.hole = true;
    return on_page("--", "NONE", Mark::bad);
  }
  auto found = std::find(legend.exceptions.begin(), legend.exceptions.end(), &row);
  if (found == legend.exceptions.end()) found = legend.exceptions.insert(found, &row);
  return on_page("--" + sign(static_cast<std::size_t>(found - legend.exceptions.begin())), "none: " + row.exception->reason, Mark::caution);
}

// A part's name stands at its first row, and on a page above its rows.
Column part_column() { return {"part", Align::left, false, OnPage::above}; }

Table table_of(const LedgerBlock& block, const job::Plan& plan, const ChosenPieces& chosen, Legend& legend, const Texts& texts) {
  Table table{"ledger", "", {part_column(), {"faces"}}, {{}}};
  for (const LedgerColumn& column : block.columns) table.columns.push_back({column.name, Align::left, true});
  const job::FaceEntry* last = nullptr;
  for (const LedgerRow& row : block.rows) {
    if (!chosen.has(row.part->piece)) continue;
    Table::Row line{{row.part == last ? Phrase() : typed(part_text(plan, *row.part)), typed(row.faces)}};
    last = row.part;
    for (std::size_t c = 0; c < block.columns.size(); ++c) line.cells.push_back(cell(row, c, block, legend, texts));
    table.groups[0].rows.push_back(std::move(line));
  }
  return table;
}

Phrase coats(const job::FaceEntry& face) {
  if (masked(face)) return {"masked", Mark::faint};
  const std::string count = fmt::format("{}", face.coats);
  if (face.coats > 0) return count;
  if (face.exception && !face.exception->reason.empty()) return on_page(count, "none: " + face.exception->reason, Mark::caution);
  return on_page(count, "NONE", Mark::bad);
}

// Without a plan there are no days: what is meant to go on instead.
Section planned_coats(const job::Plan& plan, const ChosenPieces& chosen) {
  Table table{"ledger", "", {part_column(), {"face"}, {"film coats", Align::right}}, {{}}};
  for (const job::FaceEntry& face : plan.faces) {
    if (chosen.has(face.piece)) table.groups[0].rows.push_back({{typed(part_text(plan, face)), typed(face.face), coats(face)}});
  }
  return Section{"faces", "Coats by face", "as the schedule has them", {table}};
}

Section legend_of(const Legend& legend, const job::Plan& plan) {
  Section section;
  section.media = Media::text;
  const auto add = [&](Phrase sign, Phrase words) { section.blocks.emplace_back(Paragraph{std::move(words), std::move(sign)}); };
  if (legend.hole) add({"--  ", Mark::bad}, "no coat: this face is left behind");
  if (legend.no_colour) add({".   ", Mark::faint}, "no colour here; it adds no film");
  for (std::size_t i = 0; i < legend.exceptions.size(); ++i) {
    const LedgerRow& row = *legend.exceptions[i];
    add({"--" + sign(i) + " ", Mark::caution}, part_text(plan, *row.part) + " " + row.faces + ": " + row.exception->reason);
  }
  return section;
}

}  // namespace

std::optional<Section> ledger(const job::Plan& plan, const Texts& texts, const ChosenPieces& chosen) {
  if (plan.faces.empty()) return std::nullopt;
  const std::vector<LedgerBlock> blocks = ledger_blocks(plan);
  const std::map<Month, int> coated = months(blocks, texts);
  if (coated.empty()) return planned_coats(plan, chosen);
  Legend legend{usual_month(coated)};
  const std::string full = "the day on which each coat goes on";
  const std::string in_month = full + ", in " + month_name(LocalDay(date::local_days(legend.month / 1)));
  Section section{"faces", "Coats by face", on_page(in_month + (coated.size() > 1 ? " unless said" : ""), full)};
  for (const LedgerBlock& block : blocks) {
    Table table = table_of(block, plan, chosen, legend, texts);
    if (!table.groups[0].rows.empty()) section.blocks.emplace_back(std::move(table));
  }
  section.blocks.emplace_back(legend_of(legend, plan));
  return section;
}

}  // namespace coatday::report
