#include "report/document/html_table.h"

#include <fmt/core.h>

#include <algorithm>
#include <optional>

#include "report/document/html_nodes.h"

namespace coatday::report::page {
namespace {

/// Which columns a page shows beside each other, and what stands where.
class Layout {
 public:
  explicit Layout(const Table& table) : table_(table) {
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
      if (table.columns[i].on_page == OnPage::column) beside_.push_back(i);
      if (table.columns[i].on_page == OnPage::above) above_ = i;
    }
  }

  void add(Element frame) const {
    Element table = frame.add("table", {{"class", table_.kind}});
    if (!table_.caption.empty()) table.add("caption", {}, table_.caption);
    add_heads(table);
    for (const Table::Group& group : table_.groups) add_group(table, group);
    if (!table_.sums.empty()) add_sums(table);
  }

 private:
  [[nodiscard]] bool boxes() const { return !table_.box.empty(); }
  [[nodiscard]] std::string all_columns() const { return fmt::format("{}", beside_.size() + (boxes() ? 1 : 0)); }

  void add_heads(Element table) const {
    const auto titled = [this](std::size_t i) { return !table_.columns[i].title.empty(); };
    if (!boxes() && std::none_of(beside_.begin(), beside_.end(), titled)) return;
    Element row = table.add("thead", {}).add("tr", {});
    if (boxes()) row.add("th", {{"scope", "col"}}, table_.box);
    for (const std::size_t i : beside_) {
      Element head = titled(i) ? row.add("th", {{"scope", "col"}}) : row.add("td", {});
      if (table_.columns[i].align == Align::right) head.set("class", "number");
      add_phrase(head, table_.columns[i].title);
    }
  }

  void add_title(Element body, const Phrase& title) const {
    add_phrase(body.add("tr", {{"class", "of"}}).add("th", {{"scope", "rowgroup"}, {"colspan", all_columns()}}), title);
  }

  void add_group(Element table, const Table::Group& group) const {
    Element body = table.add("tbody", {});
    if (!group.title.empty()) add_title(body, group.title);
    std::string above;
    for (const Table::Row& row : group.rows) {
      const std::string title = above_ && !row.cells.empty() ? words_of(row.cells[*above_]) : "";
      const bool new_title = !title.empty() && title != above;
      if (new_title && !above.empty()) body = table.add("tbody", {});
      if (new_title) add_title(body, row.cells[*above_]);
      if (new_title) above = title;
      add_row(body, row);
    }
  }

  void add_row(Element body, const Table::Row& row) const {
    if (!row.cells.empty()) {
      Element line = body.add("tr", {});
      if (boxes()) add_box(line, row);
      for (const std::size_t i : beside_) add_cell(line, row, i);
    }
    if (row.details.empty()) return;
    Element below = body.add("tr", {{"class", "details"}}).add("td", {{"colspan", all_columns()}});
    for (const Phrase& detail : row.details) add_phrase(below.add("p", {}), detail);
  }

  void add_box(Element line, const Table::Row& row) const {
    Element tick = line.add("td", {{"class", "tick"}});
    if (row.key.empty()) return;
    std::string name = table_.box + ":";
    for (const std::size_t i : beside_) {
      if (table_.columns[i].align == Align::left) name += " " + words_of(row.cells[i]);
    }
    tick.add("input", {{"type", "checkbox"}, {"id", row.key}, {"aria-label", name}});
  }

  void add_cell(Element line, const Table::Row& row, std::size_t column) const {
    Element cell = column == beside_.front() ? line.add("th", {{"scope", "row"}}) : line.add("td", {});
    const Phrase& words = row.cells[column];
    const Mark mark = mark_of(words);
    std::string kind(class_of(mark));
    if (table_.columns[column].align == Align::right) kind += kind.empty() ? "number" : " number";
    if (!kind.empty()) cell.set("class", kind);
    add_phrase(cell, words, mark);
    add_below(cell, row, column);
  }

  // What the columns to the right of it have to say that have no room of their own.
  void add_below(Element cell, const Table::Row& row, std::size_t column) const {
    Phrase below;
    for (std::size_t i = column + 1; i < row.cells.size() && table_.columns[i].on_page == OnPage::below; ++i) {
      if (row.cells[i].empty()) continue;
      const Phrase& title = table_.columns[i].title;
      below += (below.empty() ? Phrase() : ", ") + title + (title.empty() ? "" : " ") + row.cells[i];
    }
    if (!below.empty()) add_phrase(cell.add("span", {{"class", "below"}}), below);
  }

  void add_sums(Element table) const {
    Element line = table.add("tfoot", {}).add("tr", {});
    if (boxes()) line.add("td", {});
    for (const std::size_t i : beside_) {
      Element cell = i == beside_.front() ? line.add("th", {{"scope", "row"}}) : line.add("td", {});
      if (table_.columns[i].align == Align::right) cell.set("class", "number");
      add_phrase(cell, table_.sums[i]);
    }
  }

  const Table& table_;
  std::vector<std::size_t> beside_;
  std::optional<std::size_t> above_;
};

}  // namespace

void add_table(Element parent, const Table& table, const std::string& name) {
  const std::string& label = table.caption.empty() ? name : table.caption;
  Element frame = parent.add("div", {{"class", "scroll"}, {"tabindex", "0"}, {"role", "group"}, {"aria-label", label}});
  Layout(table).add(frame);
}

}  // namespace coatday::report::page
