#pragma once
// Everything that the checker asks of a plan, one question a function.

#include <span>
#include <string_view>

#include "checker/plan_facts.h"

namespace coatday::checker {

/// Indices and names that lead nowhere. Where there are any, nothing else can be judged.
[[nodiscard]] Breaches broken_references(const job::Plan&, const job::Job&);

void check_coverage(const PlanFacts&, Breaches&);  ///< every item of every part, in the ledger
void check_steps(const PlanFacts&, Breaches&);     ///< each step once on each face, in order
void check_both_faces(const PlanFacts&, Breaches&);
void check_ledger(const PlanFacts&, Breaches&);
void check_stages(const PlanFacts&, Breaches&);        ///< the plan's stages against the checker's own integral
void check_rate_factors(const PlanFacts&, Breaches&);  ///< the clocks' rates against the shop's ventilation
void check_waits(const PlanFacts&, Breaches&);         ///< not too early, no window missed
void check_turns(const PlanFacts&, Breaches&);
void check_places(const PlanFacts&, Breaches&);
void check_set_aside(const PlanFacts&, Breaches&);  ///< what stands aside, dry to handle, has room
void check_limits(const PlanFacts&, Breaches&);     ///< the air, surfaces and cans while a coat goes on, and after
void check_surfaces(const PlanFacts&, Breaches&);   ///< the plan's temperatures of surfaces against the checker's own
void check_warming(const PlanFacts&, Breaches&);    ///< what is kept elsewhere is carried in, and warm before it is coated
void check_moisture(const PlanFacts&, Breaches&);   ///< wood is at rest before its first coat, and cups no more than it may between faces
void check_dust_and_heat(const PlanFacts&, Breaches&);
void check_hours(const PlanFacts&, Breaches&);  ///< shifts, grid, earliest start, time enough
void check_people(const PlanFacts&, Breaches&);
void check_shop_work(const PlanFacts&, Breaches&);
void check_order_work(const PlanFacts&, Breaches&);
void check_history(const PlanFacts&, Breaches&);
void check_loads(const PlanFacts&, Breaches&);    ///< what a load is called is what it holds
void check_volumes(const PlanFacts&, Breaches&);  ///< litres, mixes within the pot life
void check_vapour(const PlanFacts&, Breaches&);   ///< together within what the exhaust carries
void check_purchase(const PlanFacts&, Breaches&);
void check_ready(const PlanFacts&, Breaches&);
void check_visits(const PlanFacts&, Breaches&);  ///< as many as the plan says

struct Check {
  std::string_view name;
  void (*run)(const PlanFacts&, Breaches&);
};
/// All of these, in the order in which their breaches are listed.
[[nodiscard]] std::span<const Check> checks();

}  // namespace coatday::checker
