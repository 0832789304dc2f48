#include "report/papers/advice.h"

#include "report/sections/advice.h"
#include "report/sections/summary.h"

namespace coatday::report {
namespace {

std::string waits_text(const job::Advice& advice, const Texts& texts) {
  const std::string good = format_temperature(Celsius(23), texts.units) + " or warmer and 30 to 50 % RH at all hours";
  if (*advice.waits_for_air < job::noticeable)
    return "Better air would hardly help: with " + good + " it would be ready less than a day sooner.";
  std::string text = "Better air would help: with " + good + " it would be ready up to " + format_span(*advice.waits_for_air) + " sooner";
  if (advice.searched) text += " than after a longer search for this plan (" + texts.instant(*advice.searched) + ")";
  return text + ".";
}

Section verdict(const job::Plan& plan, const job::Advice& advice, const Texts& texts) {
  Section section;
  if (!advice.waits_for_air) {
    section.blocks = {Paragraph{"There is no plan that could be compared with one in other air, or the order is too large for it."}};
  } else {
    section.blocks = {Paragraph{"ready " + texts.instant(*plan.ready) + ", safe to promise"}, Paragraph{waits_text(advice, texts)}};
  }
  return section;
}

Section what_helps(const job::Plan& plan, const job::Advice& advice, const Texts& texts) {
  if (advice.suggestions.empty()) return Section{"", {}, {}, {Paragraph{"No single change of those that were tried helps."}}};
  Section section{"", "What single change helps", {}, {helps(plan, advice, texts)}};
  if (changes_air(advice)) section.blocks.emplace_back(heat_caution());
  return section;
}

}  // namespace

Document advice_on_air(const job::Plan& plan, const job::Advice& advice, const std::string& order, const Texts& texts) {
  Document document{typed(order) + Phrase("  " + from_text(plan, texts), Mark::faint), {}, {verdict(plan, advice, texts)}};
  const bool waits = advice.waits_for_air && *advice.waits_for_air >= job::noticeable;
  if (waits || !advice.suggestions.empty()) document.sections.push_back(what_helps(plan, advice, texts));
  return document;
}

}  // namespace coatday::report
