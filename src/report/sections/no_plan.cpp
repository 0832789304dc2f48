#include "report/sections/no_plan.h"

#include "report/words.h"

namespace coatday::report {
namespace {

List points(const std::vector<std::string>& texts) { return {List::Kind::points, {texts.begin(), texts.end()}}; }

std::string reason(const job::Plan& plan) {
  if (plan.status == job::Status::not_found) {
    return plan.contradiction.empty() ? "No plan was found; there may be one all the same."
                                      : "No plan was found; there may be one all the same. This stood in the way most often:";
  }
  if (plan.contradiction.empty()) return "There is no plan: the errors below have to be mended first.";
  if (!plan.in_short.empty()) return "There is no plan: " + plan.in_short + ".";
  return plan.contradiction.size() == 1 ? "There is no plan. The reason:" : "There is no plan. These cannot all be so:";
}

}  // namespace

std::optional<Section> no_plan(const job::Plan& plan) {
  if (plan.status == job::Status::planned) return std::nullopt;
  const bool known = !plan.contradiction.empty();
  Section section{"reasons", "No plan", {}, {Paragraph{{reason(plan), known ? Mark::bad : Mark::plain}}}};
  section.title_in = Media::page;
  if (!plan.in_short.empty()) section.blocks.emplace_back(Paragraph{"These cannot all be so:"});
  if (known) section.blocks.emplace_back(points(plan.contradiction));
  return section;
}

std::optional<Section> proposals(const job::Plan& plan) {
  if (plan.proposals.empty() && !plan.help_cut_off) return std::nullopt;
  const bool planned = plan.status == job::Status::planned;
  List list{List::Kind::points, {}};
  for (const job::Proposal& help : plan.proposals) list.items.emplace_back(help.words + set_text(help.set));
  Section section{"help", planned ? "What would make it in time, or earlier" : "What would help"};
  if (!list.items.empty()) section.blocks.emplace_back(std::move(list));
  if (plan.help_cut_off) section.blocks.emplace_back(Paragraph{not_all_tried});
  return section;
}

}  // namespace coatday::report
