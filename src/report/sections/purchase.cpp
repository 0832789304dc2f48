#include "report/sections/purchase.h"

#include <fmt/core.h>

#include "job/compare.h"

namespace coatday::report {
namespace {

Phrase cost(const job::Plan& plan, const job::Purchase& row) {
  const std::string money = row.cost ? money_text(row.cost, plan.shop.currency) : row.buy.empty() ? "-" : "no price";
  return row.buy.empty() ? on_page(money, "–") : Phrase(money);
}

std::vector<Phrase> sums(const job::Plan& plan) {
  const auto [sum, unpriced] = job::cost_of(plan);
  if (sum.value() <= 0) return {};
  const std::string words = unpriced > 0 ? fmt::format("together, {} without a price", unpriced) : "together";
  return {words, {}, {}, {}, {}, money_text(sum, plan.shop.currency)};
}

Table products(const job::Plan& plan, const Texts& texts) {
  const bool priced = !plan.shop.currency.empty();
  Table table{"buy",
              "",
              {{on_page("", "what")},
               {"need", Align::right, false, OnPage::below},
               {"on shelf", Align::right, false, OnPage::below},
               {"buy"},
               {"left over", Align::right, false, OnPage::below}},
              {{}}};
  table.box = "got";
  if (priced) table.columns.push_back({"cost", Align::right});
  for (const job::Purchase& row : plan.purchase) {
    const Phrase cans = row.buy.empty() ? on_page("-", "nothing") : Phrase(cans_text(row.buy, texts.units));
    Table::Row line{
        {typed(purchase_name(plan, row)), texts.volume(row.need), texts.volume(row.on_hand), cans, texts.volume(row.left_over)}};
    if (priced) line.cells.push_back(cost(plan, row));
    if (!row.buy.empty()) line.key = "bought/" + row.product + (row.part.empty() ? "" : "/" + row.part);
    table.groups[0].rows.push_back(std::move(line));
  }
  if (priced) table.sums = sums(plan);
  return table;
}

Table sundries(const job::Plan& plan) {
  Table table{"buy", "", {{on_page("", "how many")}, {on_page("", "what")}, {{}, Align::left, false, OnPage::below}}, {{}}};
  table.box = "got";
  const std::string* rule = nullptr;
  for (const job::Sundry& item : plan.sundries) {
    const std::string amount = fmt::format("{}", item.count) + (item.unit.empty() ? "" : " " + item.unit);
    const bool again = rule != nullptr && *rule == item.source;
    rule = &item.source;
    table.groups[0].rows.push_back(
        {{on_page(unbroken(amount), amount), item.name, again ? Phrase() : Phrase(item.source, Mark::faint)}, {}, "bought/" + item.name});
  }
  return table;
}

}  // namespace

std::optional<Section> purchase(const job::Plan& plan, const Texts& texts) {
  if (plan.purchase.empty() && plan.sundries.empty()) return std::nullopt;
  Section section{"buy", "Buy", "need: what the coats take, and what stays in brush, cloth or gun each time"};
  if (!plan.purchase.empty()) section.blocks.emplace_back(products(plan, texts));
  for (std::string& words : spare_cans(plan, texts.units)) section.blocks.emplace_back(Paragraph{std::move(words)});
  if (!plan.sundries.empty()) section.blocks.emplace_back(Section{"", "Also", {}, {sundries(plan)}});
  return section;
}

std::vector<std::string> spare_cans(const job::Plan& plan, Units units) {
  std::vector<std::string> all;
  for (const job::Purchase& row : plan.purchase) {
    if (!row.spare) continue;
    all.push_back(fmt::format("{}: one more can of {}, since less than a twentieth would be left without it.", purchase_name(plan, row),
                              volume_text(*row.spare, units)));
  }
  return all;
}

std::string cans_text(const std::vector<job::Bought>& cans, Units units) {
  std::vector<std::string> sizes;
  for (const job::Bought& can : cans) sizes.push_back(unbroken(fmt::format("{} x ", can.count)) + volume_text(can.size, units));
  return listed(sizes);
}

std::string purchase_name(const job::Plan& plan, const job::Purchase& row) {
  return product_name(plan, row.product) + (row.part.empty() ? "" : ", " + row.part);
}

}  // namespace coatday::report
