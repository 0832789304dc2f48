#include "report/papers/report.h"

#include <fmt/core.h>

#include "report/sections/advice.h"
#include "report/sections/sections.h"

namespace coatday::report {
namespace {

void add_section(Lines& page, const Lines& section) {
  if (section.empty()) return;
  if (!page.empty()) page.emplace_back();
  append(page, section);
}

}  // namespace

std::string plan_text(const job::Plan& plan, const std::string& order, const TextStyle& style, const job::Advice& help) {
  Lines page = summary(plan, order, style);
  add_section(page, contradiction(plan, style));
  add_section(page, proposals(plan, style));
  add_section(page, advice(plan, help, style));
  add_section(page, moved(plan, style));
  add_section(page, days(plan, style));
  add_section(page, ledger(plan, style));
  add_section(page, purchase(plan, style));
  add_section(page, hand_over(plan, style));
  add_section(page, vapour(plan, style));
  add_section(page, findings(plan.findings, style));
  add_section(page, cautions(plan, style));
  return render(page, style.colour);
}

std::string buy_text(const job::Plan& plan, const std::string& order, const TextStyle& style) {
  Lines page = wrap(Text(order, Mark::strong), style.columns);
  add_section(page, contradiction(plan, style));
  Lines shopping = purchase(plan, style);
  if (shopping.empty() && plan.status == job::Status::feasible) shopping = {"Nothing to buy."};
  add_section(page, shopping);
  return render(page, style.colour);
}

std::string findings_text(const std::vector<job::Finding>& all, const std::string& order, const TextStyle& style) {
  Lines page = wrap(Text(order, Mark::strong), style.columns);
  add_section(page, all.empty() ? hang("", "Both faces, products, supports and places agree.", style) : findings(all, style));
  return render(page, style.colour);
}

std::string breaches_text(const std::vector<checker::Breach>& breaches, const TextStyle& style) {
  Lines page =
      hang("", "This is a bug in coatday: its own check refuses the plan, which is therefore not shown. Please report it with the order.",
           style);
  for (const checker::Breach& breach : breaches) append(page, hang("  - ", breach.code + ": " + breach.message, style));
  return render(page, style.colour);
}

}  // namespace coatday::report
