#include "cli/commands.h"
#include "cli/help.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "planner/advice/air_advice.h"
#include "planner/advice/lateness_advice.h"
#include "report/files/json.h"
#include "report/papers/report.h"

namespace coatday::cli {
namespace {

const About about{
    "Reads an order and plans it twice, as it is and with keys set otherwise: ready dates, time to spare, what is "
    "bought, heat, and which coats moved. Without --set it says which single change helps a plan that waits for the "
    "shop's air: warmer nights, warmer or drier air, another product of the same role, a later start.",
    {"ORDER.yaml... [--set KEY=VALUE]... [options]"},
    {"order.yaml --set \"air.night=13 C\""}};

Outcome advise(const Arguments& arguments, const World& world) {
  const auto made = planned(arguments, world);
  if (!made) return made.error();
  const job::Job& job = made->job;
  const job::Plan& plan = made->plan;
  const report::Look shown = look(arguments, world, job.shop.units);
  const int status = status_of(plan, false);
  const job::Advice advice = planner::advise(job, request_of(arguments, world, job), plan, job::Tries::all);
  if (arguments.format == Format::json) return {status, report::advice_json(plan, advice, version()), ""};
  if (plan.status != job::Status::feasible) return {status, report::plan_text(plan, job.order.name, shown), ""};
  return {status, report::advice_text(plan, advice, job.order.name, shown), ""};
}

Outcome run(const Arguments& arguments, const World& world) {
  if (arguments.set.empty()) return advise(arguments, world);
  Arguments as_it_is = arguments;
  as_it_is.set.clear();
  const auto before = planned_alone(as_it_is, world);
  if (!before) return before.error();
  auto after = planned_alone(arguments, world);
  if (!after) return after.error();
  if (after->plan.status != job::Status::feasible)
    after->plan.proposals = planner::propose(after->job, request_of(arguments, world, after->job), after->plan);
  const int status = status_of(after->plan, false);
  if (arguments.format == Format::json) return {status, report::what_if_json(before->plan, after->plan, arguments.set, version()), ""};
  const report::Look shown = look(arguments, world, after->job.shop.units);
  return {status, report::what_if_text(before->plan, after->plan, arguments.set, after->job.order.name, shown), ""};
}

}  // namespace

Command what_if_command() { return {"what-if", {orders(), set(), format(), from(), effort(), units(), colour()}, about, run}; }

}  // namespace coatday::cli
