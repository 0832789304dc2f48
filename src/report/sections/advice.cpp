// What would make a plan ready sooner that waits for the shop's air.
#include "report/sections/advice.h"

#include <fmt/core.h>

#include <algorithm>

#include "report/papers/report.h"
#include "report/sections/sections.h"
#include "report/words.h"

namespace coatday::report {
namespace {

std::string then_words(const job::Plan& plan, const job::Help& help) {
  if (help.sooner >= Hours(1)) return "ready " + instant_text(help.ready, plan.shop.zone) + ", " + format_span(help.sooner) + " sooner";
  return "ready no later, " + format_span(help.waits_less) + " less waiting";
}

std::string buy_words(const job::Plan& plan, const job::Help& help, Units units) {
  std::vector<std::string> more, less;
  for (const job::BuyChange& change : help.buys) {
    if (!change.now.empty()) more.push_back(cans_words(change.now, units) + " " + change.name);
    if (!change.was.empty()) less.push_back(cans_words(change.was, units) + " " + change.name);
  }
  std::string words;
  if (!more.empty()) words += "; buy " + listed(more);
  if (!less.empty()) words += more.empty() ? "; do not buy " + listed(less) : " in place of " + listed(less);
  if (words.empty() || !help.dearer) return words;
  const double money = help.dearer->value();
  return words + (std::abs(money) < 0.005 ? ", for the same money" : fmt::format(" ({:+.2f} {})", money, plan.shop.currency));
}

std::string heat_words(const job::Plan& plan, const job::Help& help) {
  if (!help.heat || !help.air || std::abs(help.heat->kilowatt_hours) < 0.5) return "";
  std::string words = fmt::format("; {:+.0f} kWh of heat", help.heat->kilowatt_hours);
  if (help.heat->cost && !plan.shop.currency.empty()) words += fmt::format(" ({:+.2f} {})", help.heat->cost->value(), plan.shop.currency);
  return words;
}

Lines help_lines(const job::Plan& plan, const job::Advice& advice, const TextStyle& style) {
  Lines lines;
  for (const job::Help& help : advice.helps) append(lines, hang("  - ", help_words(plan, help, style.units), style));
  if (std::any_of(advice.helps.begin(), advice.helps.end(), [](const job::Help& help) { return help.air; }))
    append(lines, heat_caution(style));
  return lines;
}

std::string waits_words(const job::Plan& plan, const job::Advice& advice, Units units) {
  const std::string good = format_temperature(Celsius(23), units) + " or warmer and 30 to 50 % RH at all hours";
  if (*advice.waits_for_air < job::noticeable)
    return "It does not wait for the air: with " + good + " it would be ready less than half a day sooner.";
  std::string words = "It waits for the air: in better air, such as " + good + ", it would be ready up to " +
                      format_span(*advice.waits_for_air) + " sooner";
  if (advice.searched) words += " than after a longer search for this plan (" + instant_text(*advice.searched, plan.shop.zone) + ")";
  return words + ".";
}

}  // namespace

std::string help_words(const job::Plan& plan, const job::Help& help, Units units) {
  return help.words + ": " + then_words(plan, help) + buy_words(plan, help, units) + heat_words(plan, help);
}

std::string cans_words(const std::vector<job::Bought>& cans, Units units) {
  std::vector<std::string> sizes;
  for (const job::Bought& can : cans) sizes.push_back(unbroken(fmt::format("{} x ", can.count)) + volume_text(can.size, units));
  return listed(sizes);
}

std::string heat_caution_words() {
  return "no flame, spark or glowing heater while solvent vapour is about; heat and ventilate as the labels and the local code say.";
}

Lines heat_caution(const TextStyle& style) { return hang(Text("Caution  ", Mark::caution), heat_caution_words(), style); }

Lines change_title(const std::string& order, const job::Plan& plan, const TextStyle& style) {
  return wrap(Text(order, Mark::strong) + "  from " + unbroken(long_date(local_day(plan.from, plan.shop.zone))), style.columns);
}

Lines advice(const job::Plan& plan, const job::Advice& advice, const TextStyle& style) {
  if (advice.too_large) return hang("", "Other air is not tried for an order of this size; coatday what-if tells what would help.", style);
  if (advice.helps.empty()) return {};
  Lines lines = hang(Text("It waits for the air: ", Mark::strong), "one change would help; coatday what-if tries smaller ones", style);
  append(lines, help_lines(plan, advice, style));
  return lines;
}

std::string advice_text(const job::Plan& plan, const job::Advice& advice, const std::string& order, const TextStyle& style) {
  Lines page = change_title(order, plan, style);
  if (!advice.waits_for_air) {
    append(page, hang("  ", "There is no plan that could be compared with one in other air, or the order is too large for it.", style));
    return render(page, style.colour);
  }
  append(page, hang("  ", "ready " + instant_text(*plan.ready, plan.shop.zone) + " by the late side", style));
  append(page, hang("  ", waits_words(plan, advice, style.units), style));
  if (*advice.waits_for_air < job::noticeable) return render(page, style.colour);
  page.emplace_back();
  if (advice.helps.empty()) append(page, hang("", "No single change of those that were tried helps.", style));
  if (!advice.helps.empty()) page.emplace_back("What single change helps, the most first", Mark::strong);
  append(page, help_lines(plan, advice, style));
  return render(page, style.colour);
}

}  // namespace coatday::report
