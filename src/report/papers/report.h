#pragma once
// What people read. Every function is pure; text is never wider than TextStyle::columns, and nothing in it can steer a terminal.

#include <optional>
#include <string>
#include <vector>

#include "checker/check.h"
#include "job/advice.h"
#include "job/plan.h"
#include "report/document/lines.h"

namespace coatday::report {

/// The whole plan: summary, what would help, days, faces, purchase, hand-over, findings, cautions.
[[nodiscard]] std::string plan_text(const job::Plan&, const std::string& order, const TextStyle&, const job::Advice& = {});
/// What to buy alone.
[[nodiscard]] std::string buy_text(const job::Plan&, const std::string& order, const TextStyle&);
/// What was found in a job before any planning.
[[nodiscard]] std::string findings_text(const std::vector<job::Finding>&, const std::string& order, const TextStyle&);
/// The checker's verdict on a plan of our own.
[[nodiscard]] std::string breaches_text(const std::vector<checker::Breach>&, const TextStyle&);

}  // namespace coatday::report
