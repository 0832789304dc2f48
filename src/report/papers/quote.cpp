#include "report/papers/quote.h"

#include <fmt/core.h>

#include "report/sections/purchase.h"

namespace coatday::report {
namespace {

struct Quoted {
  const job::Plan& plan;
  const job::Quote& quote;
  const shop::Rates& rates;
  const Texts& texts;

  [[nodiscard]] std::string money(const std::optional<Money>& m) const { return money_text(m, plan.shop.currency); }
};

Phrase strong(const std::string& text) { return {text, Mark::strong}; }

Table table_of(std::vector<Column> columns, std::vector<Table::Row> rows) {
  return {"quote", "", std::move(columns), {{{}, std::move(rows)}}};
}

Section hands(const Quoted& of) {
  std::vector<Table::Row> rows;
  for (const job::Hands& hands : of.quote.hands) rows.push_back({{hands.what, format_hours_minutes(ceil_minutes(hands.hours)), Phrase()}});
  const std::string rate = of.rates.hour ? "at " + of.money(of.rates.hour) + " an hour" : "";
  rows.push_back({{strong("together"), strong(format_hours_minutes(ceil_minutes(of.quote.hours))), rate}});
  return {"hands",
          "Hands",
          "one person's hours, with set-up and cleaning; two at work count twice",
          {table_of({{}, {{}, Align::right}, {{}, Align::right}}, std::move(rows))}};
}

std::string taken(const job::Material& material, const Texts& texts) {
  std::vector<std::string> parts;
  for (const job::Bought& can : material.buy) parts.push_back(unbroken(fmt::format("{} x ", can.count)) + texts.volume(can.size));
  if (material.from_shelf > Litres(0)) parts.push_back(unbroken(texts.volume(material.from_shelf) + " from the shelf"));
  return listed(parts);
}

Section materials(const Quoted& of) {
  std::vector<Table::Row> rows;
  for (const job::Material& material : of.quote.materials) {
    const std::string name = product_name(of.plan, material.product) + (material.part.empty() ? "" : ", " + material.part);
    rows.push_back({{name, taken(material, of.texts), material.cost ? of.money(material.cost) : "no price"}});
  }
  if (!of.plan.shop.currency.empty()) rows.push_back({{strong("together"), Phrase(), strong(of.money(of.quote.materials_cost))}});
  Section section{"materials",
                  "Materials",
                  "cans whole; what is on the shelf by the price of a litre of its smallest can",
                  {table_of({{}, {}, {{}, Align::right}}, std::move(rows))}};
  for (std::string& words : spare_cans(of.plan, of.texts.units)) section.blocks.emplace_back(Paragraph{std::move(words)});
  if (of.quote.sundries > 0)
    section.blocks.emplace_back(Paragraph{"Not in it: abrasives, rags and other small things; coatday buy counts them."});
  return section;
}

void add_due(Facts& facts, const Quoted& of) {
  for (const job::PieceResult& piece : of.plan.pieces) {
    if (!piece.due || !piece.slack) continue;
    const Phrase slack(slack_text(*piece.slack), piece.slack->count() < 0 ? Mark::bad : Mark::good);
    const Phrase name = of.plan.pieces.size() > 1 ? typed(piece.name) + ": " : Phrase();
    facts.facts.push_back({"asked for", name + of.texts.long_day(*piece.due) + ": " + slack});
  }
}

Section time(const Quoted& of) {
  const job::Quote& quote = of.quote;
  if (!quote.promise || !quote.begins || !quote.last_coat)
    return {"time", "Time", {"no date can be promised: in this air it is never ready to deliver", Mark::bad}};
  const job::QuoteDays& days = quote.days;
  const auto n = [](int count, const char* one, const char* many) { return counted(static_cast<std::size_t>(count), one, many); };
  const int later = days.hands_on + days.waiting + days.closed - 1;
  Facts facts;
  facts.facts = {
      {"days", n(days.hands_on, "day", "days") +
                   fmt::format(" with work on it, {} on which it dries or waits, {} closed", days.waiting, days.closed)},
      {"last coat", of.texts.long_day(*quote.last_coat) + "; after it the film still has to harden until nothing prints into it"},
      {"expected", of.texts.long_day(*quote.expected)},
      {"promise", of.texts.long_day(*quote.promise) + " at the earliest, " + n(later, "day", "days") +
                      " after it begins: the safe date, by what is known of the finishes and the air. If it begins later, plan it again"}};
  add_due(facts, of);
  return {"time", "Time", {}, {facts}};
}

Table sums(const Quoted& of) {
  std::vector<Table::Row> rows{{{"work", of.money(of.quote.work)}}, {{"materials", of.money(of.quote.materials_cost)}}};
  if (of.quote.markup)
    rows.push_back({{unbroken(fmt::format("markup on materials, {:.3g} %", 100 * *of.rates.material_markup)), of.money(of.quote.markup)}});
  if (of.quote.price) rows.push_back({{strong("together"), strong(of.money(of.quote.price))}});
  return table_of({{}, {{}, Align::right}}, std::move(rows));
}

Section price(const Quoted& of) {
  Section section{"price", "Price"};
  const auto say = [&section](std::string words) { section.blocks.emplace_back(Paragraph{std::move(words)}); };
  if (!of.rates.hour) {
    say("No rate is known: 'rates: {hour: 48, material markup: 15 %}' in the shop file, beside its 'currency', would make a price of "
        "this.");
    return section;
  }
  section.blocks.emplace_back(sums(of));
  if (!of.quote.price)
    say(counted(of.quote.unpriced, "finish has", "finishes have") + " no price: 'cans' in a finish file of your own give one.");
  say("For the finishing and the work that stands in the order. Wood, steel, hardware, heat, tax and risk are yours to add.");
  return section;
}

}  // namespace

Document quote(const job::Plan& plan, const job::Quote& quoted, const shop::Rates& rates, const std::string& order, const Texts& texts) {
  const Quoted of{plan, quoted, rates, texts};
  Document document{typed(order), {}, {hands(of), materials(of), time(of), price(of)}};
  if (quoted.begins)
    document.subtitle = "quote, if it begins " + texts.long_day(*quoted.begins) + " beside the shop's other work as it stands";
  return document;
}

}  // namespace coatday::report
