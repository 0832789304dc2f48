#include "planner/finish.h"

#include <algorithm>

#include "planner/advice/air_advice.h"
#include "planner/advice/lateness_advice.h"
#include "planner/wood/warnings.h"

namespace coatday::planner {
namespace {

using job::AdviceDepth;

bool is_planned(const job::Plan& plan) { return plan.status == job::Status::planned; }

bool is_late(const job::Plan& plan) {
  return std::any_of(plan.pieces.begin(), plan.pieces.end(),
                     [](const job::PieceResult& piece) { return piece.slack && *piece.slack < Hours(0); });
}

bool has_errors(const job::Plan& plan) {
  return std::any_of(plan.findings.begin(), plan.findings.end(),
                     [](const job::Finding& finding) { return finding.severity == job::Severity::error; });
}

void warn_of_wood(const job::Job& job, job::Plan& plan) {
  const std::vector<job::Finding> wood = wood_warnings(job, plan);
  plan.findings.insert(plan.findings.end(), wood.begin(), wood.end());
}

job::Advice advice_on_air(const job::Job& job, const job::Request& request, const job::Plan& plan) {
  if (request.advice == AdviceDepth::thorough) return advise_on_air(job, request, plan);
  const bool asked = request.advice == AdviceDepth::quick;
  return asked && is_planned(plan) && !has_errors(plan) && !is_late(plan) ? advise_on_air(job, request, plan) : job::Advice{};
}

}  // namespace

tl::expected<FinishedPlan, Faults> Finisher::run(const job::Job& job, const job::Request& request) const {
  job::Plan plan = make_(job, request);
  warn_of_wood(job, plan);
  if (is_planned(plan)) {
    std::vector<checker::Breach> breaches = checker::check(plan, job);
    if (!breaches.empty()) return tl::make_unexpected(Faults{std::move(breaches)});
  }
  const AdviceDepth least = is_planned(plan) ? AdviceDepth::when_late : AdviceDepth::when_impossible;
  if (request.advice >= least) {
    LatenessAdvice help = advise_when_late(job, request, plan);
    plan.proposals = std::move(help.proposals);
    plan.help_cut_off = help.cut_off;
  }
  job::Advice advice = advice_on_air(job, request, plan);
  return FinishedPlan(std::move(plan), std::move(advice));
}

}  // namespace coatday::planner
