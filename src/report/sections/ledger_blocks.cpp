#include "report/sections/ledger_blocks.h"

#include <algorithm>

#include "report/sections/faces.h"

namespace coatday::report {
namespace {

using Columns = std::vector<LedgerColumn>;

bool colours_or_films(const job::Event& event) { return event.film || (job::is_coat(event.kind) && event.kind != job::EventKind::fill); }

bool on_face(const job::Event& event, std::size_t face) {
  return std::find(event.faces.begin(), event.faces.end(), face) != event.faces.end();
}

LedgerColumn column_of(const job::Event& event) { return {event.step, event.product, event.name, event.film}; }

Columns::const_iterator find(const Columns& columns, const LedgerColumn& wanted) {
  return std::find_if(columns.begin(), columns.end(), [&wanted](const LedgerColumn& c) { return c.same(wanted); });
}

// The coats that any face of the part gets, in order.
Columns columns_of(const job::Plan& plan, const PartFaces& part) {
  Columns columns;
  for (const job::Event& event : plan.events) {
    const bool mine = std::any_of(part.faces.begin(), part.faces.end(), [&event](std::size_t f) { return on_face(event, f); });
    if (!mine || !colours_or_films(event) || find(columns, column_of(event)) != columns.end()) continue;
    columns.push_back(column_of(event));
  }
  return columns;
}

bool within(const Columns& few, const Columns& many) {
  auto from = many.begin();
  for (const LedgerColumn& column : few) {
    from = std::find_if(from, many.end(), [&column](const LedgerColumn& c) { return c.same(column); });
    if (from == many.end()) return false;
    ++from;
  }
  return true;
}

std::vector<std::optional<Instant>> coats_on(const job::Plan& plan, std::size_t face, const Columns& columns) {
  std::vector<std::optional<Instant>> coats(columns.size());
  for (const job::Event& event : plan.events) {
    if (!colours_or_films(event) || !on_face(event, face)) continue;
    const auto column = find(columns, column_of(event));
    if (column != columns.end()) coats[static_cast<std::size_t>(column - columns.begin())] = event.start;
  }
  return coats;
}

bool same_days(const std::vector<std::optional<Instant>>& a, const std::vector<std::optional<Instant>>& b, const Zone& zone) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [&zone](const auto& x, const auto& y) {
    return x.has_value() == y.has_value() && (!x || day_of(zone.to_local(*x)) == day_of(zone.to_local(*y)));
  });
}

void add_rows(const job::Plan& plan, const PartFaces& part, LedgerBlock& block) {
  std::vector<std::vector<std::size_t>> faces;  // of each new row
  const std::size_t first = block.rows.size();
  for (const std::size_t face : part.faces) {
    if (masked(plan.faces[face])) continue;
    const auto& exception = plan.faces[face].exception;
    LedgerRow row{part.first, "", coats_on(plan, face, block.columns), exception ? &*exception : nullptr};
    std::size_t at = 0;
    while (at < faces.size()) {
      const LedgerRow& old = block.rows[first + at];
      const bool same_reason =
          (old.exception == nullptr && !exception) || (old.exception != nullptr && exception && old.exception->reason == exception->reason);
      if (same_reason && same_days(old.coats, row.coats, plan.shop.zone)) break;
      ++at;
    }
    if (at == faces.size()) {
      faces.emplace_back();
      block.rows.push_back(std::move(row));
    }
    faces[at].push_back(face);
  }
  for (std::size_t i = 0; i < faces.size(); ++i) block.rows[first + i].faces = face_text(plan.faces, part.faces, faces[i]);
}

}  // namespace

std::vector<LedgerBlock> ledger_blocks(const job::Plan& plan) {
  const std::vector<PartFaces> parts = parts_of(plan.faces);
  std::vector<LedgerBlock> blocks;
  std::vector<std::size_t> block_of_part(parts.size(), 0);
  // Longest first, so that a part that misses a coat joins those that have it, and the hole is seen.
  std::vector<Columns> columns;
  for (const PartFaces& part : parts) columns.push_back(columns_of(plan, part));
  for (std::size_t p = 0; p < parts.size(); ++p) {
    std::size_t longest = p;
    for (std::size_t q = 0; q < parts.size(); ++q) {
      if (columns[q].size() > columns[longest].size() && within(columns[p], columns[q])) longest = q;
    }
    const Columns& wanted = columns[longest];
    const auto same = [&wanted](const LedgerBlock& b) { return b.columns.size() == wanted.size() && within(wanted, b.columns); };
    auto block = std::find_if(blocks.begin(), blocks.end(), same);
    if (block == blocks.end()) block = blocks.insert(block, LedgerBlock{wanted, {}});
    add_rows(plan, parts[p], *block);
  }
  return blocks;
}

}  // namespace coatday::report
