// What is told in tables: the face ledger, hand-over and the shopping list.
#include <fmt/core.h>

#include <algorithm>

#include "job/compare.h"
#include "report/document/table_html.h"
#include "report/sections/advice.h"
#include "report/sections/faces.h"
#include "report/sections/ledger.h"
#include "report/sections/sections_html.h"
#include "report/words.h"

namespace coatday::report::page {
namespace {

std::string day_words(Instant t, const job::Plan& plan) {
  const std::string date = short_date(local_day(t, plan.shop.zone));
  return unbroken(date.substr(date.find(' ') + 1));
}

bool of_order(const OrderPart& order, std::size_t piece) {
  return std::find(order.pieces.begin(), order.pieces.end(), piece) != order.pieces.end();
}

void add_coat_cell(Element row, const LedgerRow& faces, const LedgerColumn& column, const std::optional<Instant>& coat,
                   const job::Plan& plan) {
  if (coat) {
    row.add("td", {}, day_words(*coat, plan));
  } else if (!column.film) {
    row.add("td", {{"class", "none"}}, "no colour");
  } else if (faces.exception != nullptr) {
    row.add("td", {}, "none: " + faces.exception->reason).set("class", "declared");
  } else {
    row.add("td", {{"class", "hole"}}, "NONE");
  }
}

void add_block(Element parent, const job::Plan& plan, const LedgerBlock& block, const OrderPart& order) {
  if (std::none_of(block.rows.begin(), block.rows.end(), [&](const LedgerRow& row) { return of_order(order, row.part->piece); })) return;
  Element table = add_table(parent, "ledger", "The day on which each coat goes on each face");
  std::vector<std::string> heads{"faces"};
  for (const LedgerColumn& column : block.columns) heads.push_back(column.name);
  add_heads(table, heads);
  const job::FaceEntry* part = nullptr;
  Element body = table;
  for (const LedgerRow& faces : block.rows) {
    if (!of_order(order, faces.part->piece)) continue;
    if (faces.part != part) {
      part = faces.part;
      body = table.add("tbody", {});
      body.add("tr", {{"class", "of"}})
          .add("th", {{"scope", "rowgroup"}, {"colspan", fmt::format("{}", heads.size())}})
          .name(order.pieces.size() > 1 ? plan.pieces[part->piece].name + " / " + part->part : part->part);
    }
    Element row = body.add("tr", {});
    row.add("th", {{"scope", "row"}}).name(faces.faces);
    for (std::size_t c = 0; c < block.columns.size(); ++c) add_coat_cell(row, faces, block.columns[c], faces.coats[c], plan);
  }
}

// Without days: what is meant to go on.
void add_planned_coats(Element parent, const job::Plan& plan, const OrderPart& order) {
  Element table = add_table(parent, "ledger", "Film coats of each face, as the schedule has them");
  add_heads(table, {"face", "film coats"});
  for (const PartFaces& part : parts_of(plan.faces)) {
    if (!of_order(order, part.first->piece)) continue;
    Element body = table.add("tbody", {});
    body.add("tr", {{"class", "of"}}).add("th", {{"scope", "rowgroup"}, {"colspan", "2"}}).name(part_words(plan, *part.first));
    for (const std::size_t face : part.faces) {
      const job::FaceEntry& entry = plan.faces[face];
      Element row = body.add("tr", {});
      row.add("th", {{"scope", "row"}}).name(entry.face);
      if (entry.coats > 0) {
        row.add("td", {}, fmt::format("{}", entry.coats));
      } else if (masked(entry)) {
        row.add("td", {{"class", "none"}}, "masked");
      } else if (entry.exception && !entry.exception->reason.empty()) {
        row.add("td", {}, "none: " + entry.exception->reason).set("class", "declared");
      } else {
        row.add("td", {{"class", "hole"}}, "NONE");
      }
    }
  }
}

bool same(const job::PieceResult& a, const job::PieceResult& b) {
  const auto equal = [&](const job::HandOver job::PieceResult::*side) {
    return std::all_of(hand_over_moments.begin(), hand_over_moments.end(),
                       [&](const auto& m) { return a.*side.*m.second == b.*side.*m.second; });
  };
  return a.due == b.due && equal(&job::PieceResult::ready) && equal(&job::PieceResult::ready_late) && equal(&job::PieceResult::ready_early);
}

void add_moment(Element row, const std::optional<Instant>& t, const Zone& zone, const char* kind) {
  if (!t) {
    row.add("td", {}, "–");
    return;
  }
  Element cell = row.add("td", {{"class", kind}}, date_text(local_day(*t, zone)));
  cell.text(" ").add("span", {}, clock_time(zone.to_local(*t)));
}

void add_dates(Element table, const job::Plan& plan, const job::PieceResult& piece, const std::string& names) {
  Element body = table.add("tbody", {});
  Element head = body.add("tr", {{"class", "of"}}).add("th", {{"scope", "rowgroup"}, {"colspan", "4"}});
  head.name(names);
  if (piece.due) {
    head.add("span", {}, ", promised " + instant_text(*piece.due, plan.shop.zone) + (piece.slack ? ": " + slack_text(*piece.slack) : ""));
  }
  for (const auto& [name, moment] : hand_over_moments) {
    Element row = body.add("tr", {});
    row.add("th", {{"scope", "row"}}, name);
    const bool waits_for_hands = moment == &job::HandOver::deliver;
    add_moment(row, waits_for_hands ? std::nullopt : piece.ready_early.*moment, plan.shop.zone, "side");
    add_moment(row, piece.ready.*moment, plan.shop.zone, "");
    add_moment(row, piece.ready_late.*moment, plan.shop.zone, "late");
  }
}

void add_can(Element body, const job::Plan& plan, const job::Purchase& row, Units units, bool priced) {
  const std::string name = product_name(plan, row.product) + (row.part.empty() ? "" : ", " + row.part);
  const std::string id = "bought/" + row.product + (row.part.empty() ? "" : "/" + row.part);
  Element line = body.add("tr", {});
  Element tick = line.add("td", {{"class", "tick"}});
  if (!row.buy.empty()) tick.add("input", {{"type", "checkbox"}, {"id", id}, {"aria-label", "bought: " + name}});
  Element what = line.add("th", {{"scope", "row"}});
  what.name(name);
  what.add("span", {},
           "takes " + volume_text(row.need, units) + ", on the shelf " + volume_text(row.on_hand, units) + ", left over " +
               volume_text(row.left_over, units));
  line.add("td", {}, row.buy.empty() ? "nothing" : cans_words(row.buy, units));
  if (priced)
    line.add("td", {{"class", "money"}}, row.buy.empty() ? "–" : row.cost ? money_text(row.cost, plan.shop.currency) : "no price");
}

void add_sundries(Element section, const job::Plan& plan) {
  if (plan.sundries.empty()) return;
  Element table = add_table(section, "buy", "Abrasives and other small things");
  add_heads(table, {"got", "what", "how many"});
  Element body = table.add("tbody", {});
  for (const job::Sundry& item : plan.sundries) {
    Element line = body.add("tr", {});
    line.add("td", {{"class", "tick"}})
        .add("input", {{"type", "checkbox"}, {"id", "bought/" + item.name}, {"aria-label", "bought: " + item.name}});
    Element what = line.add("th", {{"scope", "row"}}, item.name);
    what.add("span", {}, item.source);
    line.add("td", {}, fmt::format("{}", item.count) + (item.unit.empty() ? "" : " " + item.unit));
  }
}

}  // namespace

Element add_table(Element parent, const std::string& kind, std::string_view caption) {
  Element frame = parent.add("div", {{"class", "scroll"}, {"tabindex", "0"}, {"role", "group"}, {"aria-label", std::string(caption)}});
  Element table = frame.add("table", {{"class", kind}});
  table.add("caption", {}, caption);
  return table;
}

void add_heads(Element table, const std::vector<std::string>& names) {
  Element row = table.add("thead", {}).add("tr", {});
  for (const std::string& name : names) row.add("th", {{"scope", "col"}}, name);
}

void add_ledger(Element parent, const job::Plan& plan, const OrderPart& order) {
  const std::vector<LedgerBlock> blocks = ledger_blocks(plan);
  const bool planned = std::any_of(blocks.begin(), blocks.end(), [](const LedgerBlock& b) { return !b.columns.empty(); });
  if (!planned) {
    add_planned_coats(parent, plan, order);
    return;
  }
  for (const LedgerBlock& block : blocks) add_block(parent, plan, block, order);
}

void add_hand_over(Element parent, const job::Plan& plan, const OrderPart& order) {
  Element table = add_table(parent, "dates", "What may be done with it, from when; give the customer the late side");
  add_heads(table, {"what", "early side", "expected", "late side"});
  std::vector<bool> told(plan.pieces.size(), false);
  for (const std::size_t i : order.pieces) {
    if (told[i]) continue;
    std::vector<std::string> names;
    for (const std::size_t j : order.pieces) {
      if (told[j] || !same(plan.pieces[i], plan.pieces[j])) continue;
      told[j] = true;
      names.push_back(plan.pieces[j].name);
    }
    add_dates(table, plan, plan.pieces[i], listed(names));
  }
}

void add_purchase(Contents& contents, const job::Plan& plan, Units units) {
  if (plan.purchase.empty() && plan.sundries.empty()) return;
  Element section = contents.section("buy", "To buy");
  const bool priced = !plan.shop.currency.empty();
  if (!plan.purchase.empty()) {
    Element table = add_table(section, "buy", "Finishes, in whole cans; what brush, cloth and gun keep back is counted");
    add_heads(table, priced ? std::vector<std::string>{"got", "what", "cans", "cost"} : std::vector<std::string>{"got", "what", "cans"});
    Element body = table.add("tbody", {});
    for (const job::Purchase& row : plan.purchase) add_can(body, plan, row, units, priced);
    const auto [sum, unpriced] = job::cost_of(plan);
    if (priced && sum.value() > 0) {
      Element total = table.add("tfoot", {}).add("tr", {});
      total.add("th", {{"scope", "row"}, {"colspan", "3"}},
                unpriced > 0 ? fmt::format("together, {} without a price", unpriced) : "together");
      total.add("td", {{"class", "money"}}, money_text(sum, plan.shop.currency));
    }
  }
  add_sundries(section, plan);
}

}  // namespace coatday::report::page
