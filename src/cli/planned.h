#pragma once
// What the commands share: reading an order, planning it, and having the plan checked before anybody sees it.

#include <functional>

#include <tl/expected.hpp>

#include "cli/arguments.h"
#include "cli/world.h"
#include "plan/check.h"
#include "plan/planner.h"
#include "plan/propose.h"
#include "report/lines.h"

namespace coatday::cli {

/// With the keys that the arguments set.
[[nodiscard]] tl::expected<plan::Job, Outcome> load(const Arguments&, const World&);
/// What the shop asks for its work.
[[nodiscard]] tl::expected<shop::Rates, Outcome> load_rates(const Arguments&, const World&);
/// A shop without an order.
[[nodiscard]] tl::expected<plan::Job, Outcome> load_shop(const Arguments&, const World&);
[[nodiscard]] tl::expected<climate::Log, Outcome> load_log(const Arguments&, const plan::Job& shop, const World&);
[[nodiscard]] tl::expected<finish::Catalogue, Outcome> load_finishes(const Arguments&, const World&);

struct Planned {
  plan::Job job;
  plan::Plan plan;
  plan::Advice advice{};
};
/// A plan that the checker found sound, or one that says why there is none and what would help.
[[nodiscard]] tl::expected<Planned, Outcome> planned(const Arguments&, const World&);
/// The same, and what would make it ready sooner where it is in time.
[[nodiscard]] tl::expected<Planned, Outcome> planned_with_advice(const Arguments&, const World&);
/// The same without what would help.
[[nodiscard]] tl::expected<Planned, Outcome> planned_alone(const Arguments&, const World&);
/// What is printed of a plan, its findings beside it; why there is none where there is none.
[[nodiscard]] Outcome printed(const Arguments&, const World&,
                              const std::function<std::string(const plan::Plan&, const plan::Job&, const report::Look&)>& text);
[[nodiscard]] plan::Request request_of(const Arguments&, const World&, const plan::Job&);

/// When to plan from: as said, but not before the order's start; else that start, else now rounded up to 5 min.
[[nodiscard]] Instant plan_from(const Arguments&, const plan::Job&, Instant now);
[[nodiscard]] report::Look look(const Arguments&, const World&, Units shop_units);

/// The exit status for what was found.
[[nodiscard]] int status_of(const std::vector<plan::Finding>&, bool strict);
[[nodiscard]] int status_of(const plan::Plan&, bool strict);
/// Exit status 3 with the breaches, in place of the plan.
[[nodiscard]] Outcome refused_by_checker(const std::vector<plan::Breach>&);

}  // namespace coatday::cli
