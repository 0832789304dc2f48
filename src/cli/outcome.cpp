#include "cli/outcome.h"

#include <algorithm>

namespace coatday::cli {

Outcome mistaken(const std::string& message) { return {bad_input, "", "coatday: error: " + message + "\n"}; }

int status_of(const std::vector<job::Finding>& findings, bool strict) {
  const job::Severity worst = strict ? job::Severity::warning : job::Severity::error;
  const bool bad = std::any_of(findings.begin(), findings.end(), [worst](const job::Finding& f) { return f.severity >= worst; });
  return bad ? no_plan : done;
}

int status_of(const job::Plan& plan, bool strict) {
  return plan.status == job::Status::planned ? status_of(plan.findings, strict) : no_plan;
}

}  // namespace coatday::cli
