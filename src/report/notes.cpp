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

}  // namespace

Lines findings(const std::vector<plan::Finding>& all, const Look& look) {
  if (all.empty()) return {};
  Lines lines{Text("Findings", Ink::strong)};
  for (const plan::Finding& finding : all) {
    const std::string subject = finding.subject.empty() ? "" : finding.subject + ": ";
    append(lines, hang("  " + padded(severity(finding.severity), 9), subject + finding.message + place_words(finding.where), look));
  }
  return lines;
}

Lines cautions(const plan::Plan& plan, const Look& look) {
  if (plan.cautions.empty()) return {};
  Lines lines{Text("Cautions", Ink::strong)};
  for (const auto& [key, text] : plan.cautions) append(lines, hang(Text("  ! ", Ink::heed), text, look));
  return lines;
}

std::string place_words(const Location& where) {
  return where.line > 0 ? fmt::format(" ({}:{}:{})", where.file, where.line, where.column) : "";
}

std::string contradiction_words(const plan::Plan& plan) {
  if (plan.status == plan::Status::feasible) return "";
  if (plan.status == plan::Status::not_found) return "No plan was found in the time given, and none is proven impossible.";
  if (plan.contradiction.empty()) return "There is no plan: the errors below have to be mended first.";
  return plan.contradiction.size() == 1 ? "There is no plan. The reason:" : "There is no plan. These cannot all be so:";
}

Lines contradiction(const plan::Plan& plan, const Look& look) {
  if (plan.status == plan::Status::feasible) return {};
  const bool told = plan.status == plan::Status::infeasible && !plan.contradiction.empty();
  Lines lines = hang("", Text(contradiction_words(plan), told ? Ink::bad : Ink::plain), look);
  if (!told) return lines;
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
