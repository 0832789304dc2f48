#include "report/sections/findings.h"

#include <fmt/core.h>

namespace coatday::report {
namespace {

Phrase severity(job::Severity severity) {
  switch (severity) {
    case job::Severity::note:
      return {"note     ", Mark::faint};
    case job::Severity::warning:
      return {"warning  ", Mark::caution};
    case job::Severity::error:
      return {"error    ", Mark::bad};
  }
  return {};
}

}  // namespace

std::optional<Section> findings(const std::vector<job::Finding>& all) {
  if (all.empty()) return std::nullopt;
  Section section{"findings", "Findings"};
  for (const job::Finding& finding : all) {
    const std::string subject = finding.subject.empty() ? "" : finding.subject + ": ";
    section.blocks.push_back(Paragraph{subject + finding.message + place_text(finding.where), severity(finding.severity)});
  }
  return section;
}

std::string place_text(const Location& where) {
  return where.line > 0 ? fmt::format(" ({}:{}:{})", where.file, where.line, where.column) : "";
}

}  // namespace coatday::report
