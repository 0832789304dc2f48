#include "report/sections/advice.h"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "report/sections/purchase.h"

namespace coatday::report {
namespace {

std::string then_text(const job::Suggestion& help, const Texts& texts) {
  return "ready " + texts.instant(help.ready) + ", " + format_span(help.sooner) + " sooner";
}

std::string buy_text(const job::Plan& plan, const job::Suggestion& help, Units units) {
  std::vector<std::string> more, less;
  for (const job::BuyChange& change : help.buys) {
    if (!change.now.empty()) more.push_back(cans_text(change.now, units) + " " + change.name);
    if (!change.was.empty()) less.push_back(cans_text(change.was, units) + " " + change.name);
  }
  std::string text;
  if (!more.empty()) text += "; buy " + listed(more);
  if (!less.empty()) text += more.empty() ? "; do not buy " + listed(less) : " in place of " + listed(less);
  if (text.empty() || !help.dearer) return text;
  const double money = help.dearer->value();
  return text + (std::abs(money) < 0.005 ? ", for the same money" : fmt::format(" ({:+.2f} {})", money, plan.shop.currency));
}

std::string heat_text(const job::Plan& plan, const job::Suggestion& help) {
  if (!help.heat || !help.air || std::abs(help.heat->kilowatt_hours) < 0.5) return "";
  std::string text = fmt::format("; {:+.0f} kWh of heat", help.heat->kilowatt_hours);
  if (help.heat->cost && !plan.shop.currency.empty()) text += fmt::format(" ({:+.2f} {})", help.heat->cost->value(), plan.shop.currency);
  return text;
}

}  // namespace

List helps(const job::Plan& plan, const job::Advice& advice, const Texts& texts) {
  List list;
  for (const job::Suggestion& help : advice.suggestions) {
    list.items.emplace_back(help.words + ": " + then_text(help, texts) + buy_text(plan, help, texts.units) + heat_text(plan, help) +
                            set_text(help.set));
  }
  return list;
}

bool changes_air(const job::Advice& advice) {
  return std::any_of(advice.suggestions.begin(), advice.suggestions.end(), [](const job::Suggestion& help) { return help.air; });
}

Section heat_caution() {
  Section remark{"", {"Caution", Mark::caution}};
  remark.lead = "no flame, spark or glowing heater while solvent vapour is about; heat and ventilate as the labels and the local code say.";
  remark.kind = "remark";
  return remark;
}

std::optional<Section> advice(const job::Plan& plan, const job::Advice& advice, const Texts& texts) {
  if (advice.too_large) {
    Section section{"waiting",
                    "Other air",
                    {},
                    {Paragraph{"Other air is not tried for an order of this size; coatday what-if shows what would help."}}};
    section.title_in = Media::page;
    return section;
  }
  if (advice.suggestions.empty() && !advice.cut_off) return std::nullopt;
  Section section{"waiting", on_page("What would be quicker:", "What would be quicker")};
  if (!advice.suggestions.empty()) {
    section.lead = "one change of these; coatday what-if tries smaller ones";
    section.blocks.emplace_back(helps(plan, advice, texts));
  }
  if (advice.cut_off) section.blocks.emplace_back(Paragraph{not_all_tried});
  if (changes_air(advice)) section.blocks.emplace_back(heat_caution());
  return section;
}

}  // namespace coatday::report
