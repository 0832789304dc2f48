#include "checker/check.h"

#include "checker/plan_facts.h"

namespace coatday::checker {

std::vector<Breach> check(const job::Plan& plan, const job::Job& job) {
  if (plan.status != job::Status::feasible) return {};
  checker::Breaches breaches = checker::broken_references(plan, job);
  if (!breaches.empty()) return breaches;
  const checker::PlanFacts facts(plan, job);
  for (const auto question :
       {checker::check_coverage,   checker::check_steps,         checker::check_both_faces, checker::check_ledger, checker::check_stages,
        checker::check_waits,      checker::check_turns,         checker::check_places,     checker::check_limits, checker::check_surfaces,
        checker::check_warming,    checker::check_dust_and_heat, checker::check_hours,      checker::check_people, checker::check_shop_work,
        checker::check_order_work, checker::check_history,       checker::check_volumes,    checker::check_vapour, checker::check_purchase,
        checker::check_ready,      checker::check_paces,         checker::check_moisture}) {
    question(facts, breaches);
  }
  return breaches;
}

}  // namespace coatday::checker
