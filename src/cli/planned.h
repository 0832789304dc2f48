#pragma once
// What the commands share: reading an order, planning it, and having the plan checked before anybody sees it.

#include <functional>

#include <tl/expected.hpp>

#include "cli/arguments.h"
#include "cli/world.h"
#include "planner/planner.h"
#include "report/document/lines.h"

namespace coatday::cli {

/// With the keys that the arguments set.
[[nodiscard]] tl::expected<job::Job, Outcome> load(const Arguments&, const World&);
/// What the shop asks for its work.
[[nodiscard]] tl::expected<shop::Rates, Outcome> load_rates(const Arguments&, const World&);
/// A shop without an order.
[[nodiscard]] tl::expected<job::Job, Outcome> load_shop(const Arguments&, const World&);
[[nodiscard]] tl::expected<climate::Log, Outcome> load_log(const Arguments&, const job::Job& shop, const World&);
[[nodiscard]] tl::expected<finish::Catalogue, Outcome> load_finishes(const Arguments&, const World&);

struct Planned {
  job::Job job;
  planner::FinishedPlan finished;
  [[nodiscard]] const job::Plan& plan() const { return finished.plan(); }
};
/// The order's plan, or what is printed in its place: mistakes in the files, or faults of our own.
[[nodiscard]] tl::expected<Planned, Outcome> planned(const Arguments&, const World&, job::AdviceDepth);
/// What is printed of a plan, its findings beside it; why there is none where there is none.
[[nodiscard]] Outcome printed(const Arguments&, const World&,
                              const std::function<std::string(const job::Plan&, const job::Job&, const report::TextStyle&)>& text);
/// When to plan from: as said, but not before the order's start; else that start, else now rounded up to 5 min.
[[nodiscard]] Instant plan_from(const Arguments&, const job::Job&, Instant now);
[[nodiscard]] report::TextStyle text_style(const Arguments&, const World&, Units shop_units);

/// The exit status for what was found.
[[nodiscard]] int status_of(const std::vector<job::Finding>&, bool strict);
[[nodiscard]] int status_of(const job::Plan&, bool strict);
/// Exit status 3 with the breaches, in place of the plan.
[[nodiscard]] Outcome refused_by_checker(const std::vector<checker::Breach>&);

}  // namespace coatday::cli
