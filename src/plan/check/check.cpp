#include "plan/check.h"

#include "plan/check/facts.h"

namespace coatday::plan {

std::vector<Breach> check(const Plan& plan, const Job& job) {
  if (plan.status != Status::feasible) return {};
  checking::Breaches breaches = checking::broken_references(plan, job);
  if (!breaches.empty()) return breaches;
  const checking::Facts facts(plan, job);
  for (const auto question : {checking::check_coverage, checking::check_steps,    checking::check_both_faces, checking::check_ledger,
                              checking::check_stages,   checking::check_waits,    checking::check_turns,      checking::check_places,
                              checking::check_limits,   checking::check_surfaces, checking::check_warming,    checking::check_dust_and_heat,
                              checking::check_hours,    checking::check_people,   checking::check_shop_work,  checking::check_order_work,
                              checking::check_history,  checking::check_volumes,  checking::check_vapour,     checking::check_purchase,
                              checking::check_ready,    checking::check_paces,    checking::check_moisture}) {
    question(facts, breaches);
  }
  return breaches;
}

}  // namespace coatday::plan
