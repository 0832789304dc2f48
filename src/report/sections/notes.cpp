// What must be said beside the plan: findings, cautions, and why there is no plan.
#include <fmt/core.h>

#include "report/sections/sections.h"

namespace coatday::report {
namespace {

Text severity(job::Severity s) {
  switch (s) {
    case job::Severity::note:
      return {"note", Mark::faint};
    case job::Severity::warning:
      return {"warning", Mark::caution};
    case job::Severity::error:
      return {"error", Mark::bad};
  }
  return {};
}

}  // namespace

Lines findings(const std::vector<job::Finding>& all, const TextStyle& style) {
  if (all.empty()) return {};
  Lines lines{Text("Findings", Mark::strong)};
  for (const job::Finding& finding : all) {
    const std::string subject = finding.subject.empty() ? "" : finding.subject + ": ";
    append(lines, hang("  " + padded(severity(finding.severity), 9), subject + finding.message + place_words(finding.where), style));
  }
  return lines;
}

Lines cautions(const job::Plan& plan, const TextStyle& style) {
  if (plan.cautions.empty()) return {};
  Lines lines{Text("Cautions", Mark::strong)};
  for (const auto& [key, text] : plan.cautions) append(lines, hang(Text("  ! ", Mark::caution), text, style));
  return lines;
}

std::string place_words(const Location& where) {
  return where.line > 0 ? fmt::format(" ({}:{}:{})", where.file, where.line, where.column) : "";
}

std::string contradiction_words(const job::Plan& plan) {
  if (plan.status == job::Status::feasible) return "";
  if (plan.status == job::Status::not_found) return "No plan was found in the time given, and none is proven impossible.";
  if (plan.contradiction.empty()) return "There is no plan: the errors below have to be mended first.";
  return plan.contradiction.size() == 1 ? "There is no plan. The reason:" : "There is no plan. These cannot all be so:";
}

Lines contradiction(const job::Plan& plan, const TextStyle& style) {
  if (plan.status == job::Status::feasible) return {};
  const bool told = plan.status == job::Status::infeasible && !plan.contradiction.empty();
  Lines lines = hang("", Text(contradiction_words(plan), told ? Mark::bad : Mark::plain), style);
  if (!told) return lines;
  for (const std::string& requirement : plan.contradiction) append(lines, hang("  - ", requirement, style));
  return lines;
}

Lines proposals(const job::Plan& plan, const TextStyle& style) {
  if (plan.proposals.empty()) return {};
  Lines lines{Text(plan.status == job::Status::feasible ? "What would make it in time, or earlier" : "What would help", Mark::strong)};
  for (const std::string& proposal : plan.proposals) append(lines, hang("  - ", proposal, style));
  return lines;
}

}  // namespace coatday::report
