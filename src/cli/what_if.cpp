#include "cli/commands.h"
#include "cli/help.h"
#include "cli/options.h"
#include "cli/planned.h"
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
  const auto made = planned(arguments, world, job::AdviceDepth::thorough);
  if (!made) return made.error();
  const job::Job& job = made->job;
  const job::Plan& plan = made->plan();
  const report::TextStyle shown = text_style(arguments, world, job.shop.units);
  const int status = status_of(plan, false);
  const job::Advice& advice = made->finished.advice();
  if (arguments.format == Format::json) return {status, report::advice_json(plan, advice, version()), ""};
  if (plan.status != job::Status::feasible) return {status, report::plan_text(plan, job.order.name, shown), ""};
  return {status, report::advice_text(plan, advice, job.order.name, shown), ""};
}

Outcome run(const Arguments& arguments, const World& world) {
  if (arguments.set.empty()) return advise(arguments, world);
  Arguments as_it_is = arguments;
  as_it_is.set.clear();
  const auto before = planned(as_it_is, world, job::AdviceDepth::none);
  if (!before) return before.error();
  const auto after = planned(arguments, world, job::AdviceDepth::when_impossible);
  if (!after) return after.error();
  const int status = status_of(after->plan(), false);
  if (arguments.format == Format::json) return {status, report::what_if_json(before->plan(), after->plan(), arguments.set, version()), ""};
  const report::TextStyle shown = text_style(arguments, world, after->job.shop.units);
  return {status, report::what_if_text(before->plan(), after->plan(), arguments.set, after->job.order.name, shown), ""};
}

}  // namespace

Command what_if_command() { return {"what-if", {orders(), set(), format(), from(), effort(), units(), colour()}, about, run}; }

}  // namespace coatday::cli
