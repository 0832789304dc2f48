// What must be said beside the plan: findings, cautions, and why there is no plan.
#include <fmt/core.h>

#include "report/sections.h"

namespace coatday::report {
namespace {

Text severity(plan::Severity s) {
  switch (s) {
    case plan::Severity::note:
      return {"note", Ink::faint};
    case plan::Severity::warning:
      return {"warning", Ink::heed};
    case plan::Severity::error:
      return {"error", Ink::bad};
  }
  return {};
}

std::string place(const Location& where) { return where.line > 0 ? fmt::format(" ({}:{}:{})", where.file, where.line, where.column) : ""; }

}  // namespace

Lines findings(const std::vector<plan::Finding>& all, const Look& look) {
  if (all.empty()) return {};
  Lines lines{Text("Findings", Ink::strong)};
  for (const plan::Finding& finding : all) {
    const std::string subject = finding.subject.empty() ? "" : finding.subject + ": ";
    append(lines, hang("  " + padded(severity(finding.severity), 9), subject + finding.message + place(finding.where), look));
  }
  return lines;
}

Lines cautions(const plan::Plan& plan, const Look& look) {
  if (plan.cautions.empty()) return {};
  Lines lines{Text("Cautions", Ink::strong)};
  for (const auto& [key, text] : plan.cautions) append(lines, hang(Text("  ! ", Ink::heed), text, look));
  return lines;
}

Lines contradiction(const plan::Plan& plan, const Look& look) {
  if (plan.status == plan::Status::feasible) return {};
  if (plan.status == plan::Status::not_found) {
    return hang("", "No plan was found in the time given, and none is proven impossible.", look);
  }
  if (plan.contradiction.empty()) return hang("", "There is no plan: the errors below have to be mended first.", look);
  Lines lines =
      hang("", Text("There is no plan. ", Ink::bad) + (plan.contradiction.size() == 1 ? "The reason:" : "These cannot all be so:"), look);
  for (const std::string& requirement : plan.contradiction) append(lines, hang("  - ", requirement, look));
  return lines;
}

Lines proposals(const plan::Plan& plan, const Look& look) {
  if (plan.proposals.empty()) return {};
  Lines lines{Text(plan.status == plan::Status::feasible ? "What would make it in time, or earlier" : "What would help", Ink::strong)};
  for (const std::string& proposal : plan.proposals) append(lines, hang("  - ", proposal, look));
  return lines;
}

}  // namespace coatday::report
