#include <fmt/core.h>

#include <algorithm>

#include "report/document/table.h"
#include "report/sections/sections.h"
#include "report/words.h"

namespace coatday::report {
namespace {

std::string cans(const job::Purchase& row, const TextStyle& style) {
  std::vector<std::string> items;
  for (const job::Bought& can : row.buy) items.push_back(unbroken(fmt::format("{} x ", can.count)) + volume_text(can.size, style.units));
  return items.empty() ? "-" : listed(items);
}

TextTable products(const job::Plan& plan, const TextStyle& style) {
  const bool priced = !plan.shop.currency.empty();
  TextTable table;
  for (const char* title : {"", "need", "on shelf", "buy", "left over"}) {
    const bool number = std::string_view(title) != "" && std::string_view(title) != "buy";
    table.columns.push_back({Text(title, Mark::faint), number ? Align::right : Align::left});
  }
  if (priced) table.columns.push_back({Text("cost", Mark::faint), Align::right});
  for (const job::Purchase& row : plan.purchase) {
    const std::string name = product_name(plan, row.product) + (row.part.empty() ? "" : ", " + row.part);
    table.rows.push_back({name, volume_text(row.need, style.units), volume_text(row.on_hand, style.units), cans(row, style),
                          volume_text(row.left_over, style.units)});
    if (priced) table.rows.back().push_back(row.cost ? money_text(row.cost, plan.shop.currency) : row.buy.empty() ? "-" : "no price");
  }
  return table;
}

}  // namespace

Lines purchase(const job::Plan& plan, const TextStyle& style) {
  if (plan.purchase.empty() && plan.sundries.empty()) return {};
  Lines lines = hang(Text("Buy  ", Mark::strong), "need: what the coats take, and what stays in brush, cloth or gun each time", style);
  if (!plan.purchase.empty()) append(lines, layout(products(plan, style), 2, style));
  if (plan.sundries.empty()) return lines;
  append(lines, {"", Text("Also", Mark::strong)});
  TextTable table{{{}, {}, {}}, {}};
  const std::string* rule = nullptr;
  for (const job::Sundry& item : plan.sundries) {
    const std::string amount = fmt::format("{}", item.count) + (item.unit.empty() ? "" : " " + item.unit);
    const bool told = rule != nullptr && *rule == item.source;
    rule = &item.source;
    table.rows.push_back({unbroken(amount), item.name, Text(told ? "" : item.source, Mark::faint)});
  }
  append(lines, layout(table, 2, style));
  return lines;
}

}  // namespace coatday::report
