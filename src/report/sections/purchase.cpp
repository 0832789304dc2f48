#include <fmt/core.h>

#include <algorithm>

#include "report/document/table.h"
#include "report/sections/sections.h"
#include "report/words.h"

namespace coatday::report {
namespace {

std::string cans(const job::Purchase& row, const Look& look) {
  std::vector<std::string> items;
  for (const job::Bought& can : row.buy) items.push_back(unbroken(fmt::format("{} x ", can.count)) + volume_words(can.size, look.units));
  return items.empty() ? "-" : listed(items);
}

Table products(const job::Plan& plan, const Look& look) {
  const bool priced = !plan.shop.currency.empty();
  Table table;
  for (const char* title : {"", "need", "on shelf", "buy", "left over"}) {
    const bool number = std::string_view(title) != "" && std::string_view(title) != "buy";
    table.columns.push_back({Text(title, Ink::faint), number ? Align::right : Align::left});
  }
  if (priced) table.columns.push_back({Text("cost", Ink::faint), Align::right});
  for (const job::Purchase& row : plan.purchase) {
    const std::string name = product_name(plan, row.product) + (row.part.empty() ? "" : ", " + row.part);
    table.rows.push_back({name, volume_words(row.need, look.units), volume_words(row.on_hand, look.units), cans(row, look),
                          volume_words(row.left_over, look.units)});
    if (priced) table.rows.back().push_back(row.cost ? money_words(row.cost, plan.shop.currency) : row.buy.empty() ? "-" : "no price");
  }
  return table;
}

}  // namespace

Lines purchase(const job::Plan& plan, const Look& look) {
  if (plan.purchase.empty() && plan.sundries.empty()) return {};
  Lines lines = hang(Text("Buy  ", Ink::strong), "need: what the coats take, and what stays in brush, cloth or gun each time", look);
  if (!plan.purchase.empty()) append(lines, layout(products(plan, look), 2, look));
  if (plan.sundries.empty()) return lines;
  append(lines, {"", Text("Also", Ink::strong)});
  Table table{{{}, {}, {}}, {}};
  const std::string* rule = nullptr;
  for (const job::Sundry& item : plan.sundries) {
    const std::string amount = fmt::format("{}", item.count) + (item.unit.empty() ? "" : " " + item.unit);
    const bool told = rule != nullptr && *rule == item.source;
    rule = &item.source;
    table.rows.push_back({unbroken(amount), item.name, Text(told ? "" : item.source, Ink::faint)});
  }
  append(lines, layout(table, 2, look));
  return lines;
}

}  // namespace coatday::report
