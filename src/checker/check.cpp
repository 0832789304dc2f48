#include "checker/check.h"

#include "checker/checks.h"

namespace coatday::checker {

std::vector<Breach> check(const job::Plan& plan, const job::Job& job) {
  if (plan.status != job::Status::planned) return {};
  Breaches breaches = broken_references(plan, job);
  if (!breaches.empty()) return breaches;
  const PlanFacts facts(plan, job);
  for (const Check& one : checks()) one.run(facts, breaches);
  return breaches;
}

}  // namespace coatday::checker
