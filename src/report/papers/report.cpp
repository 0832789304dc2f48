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

std::string plan_text(const job::Plan& plan, const std::string& order, const Look& look, const job::Advice& help) {
  Lines page = summary(plan, order, look);
  add_section(page, contradiction(plan, look));
  add_section(page, proposals(plan, look));
  add_section(page, advice(plan, help, look));
  add_section(page, moved(plan, look));
  add_section(page, days(plan, look));
  add_section(page, ledger(plan, look));
  add_section(page, purchase(plan, look));
  add_section(page, hand_over(plan, look));
  add_section(page, vapour(plan, look));
  add_section(page, findings(plan.findings, look));
  add_section(page, cautions(plan, look));
  return render(page, look.colour);
}

std::string buy_text(const job::Plan& plan, const std::string& order, const Look& look) {
  Lines page = wrap(Text(order, Ink::strong), look.columns);
  add_section(page, contradiction(plan, look));
  Lines shopping = purchase(plan, look);
  if (shopping.empty() && plan.status == job::Status::feasible) shopping = {"Nothing to buy."};
  add_section(page, shopping);
  return render(page, look.colour);
}

std::string findings_text(const std::vector<job::Finding>& all, const std::string& order, const Look& look) {
  Lines page = wrap(Text(order, Ink::strong), look.columns);
  add_section(page, all.empty() ? hang("", "Both faces, products, supports and places agree.", look) : findings(all, look));
  return render(page, look.colour);
}

std::string breaches_text(const std::vector<checker::Breach>& breaches, const Look& look) {
  Lines page = hang(
      "", "This is a bug in coatday: its own check refuses the plan, which is therefore not shown. Please report it with the order.", look);
  for (const checker::Breach& breach : breaches) append(page, hang("  - ", breach.code + ": " + breach.message, look));
  return render(page, look.colour);
}

}  // namespace coatday::report
