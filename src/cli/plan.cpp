#include "cli/commands.h"
#include "cli/help.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "report/files/json.h"
#include "report/papers/report.h"

namespace coatday::cli {
namespace {

const About about{
    "Reads an order, with the shop and finishes that it names, and prints the plan: summary, days, faces, what to "
    "buy, hand-over, cautions.",
    {"ORDER.yaml... [options]"},
    {"kitchen.yaml table.yaml --keep monday.json"}};

constexpr const char* orders_help =
    "one order, or several that name the same shop file and share its people, hours and places. Finishes that any of them names count for "
    "all; a piece whose id two orders have gets its order's name before it";
constexpr const char* keep_help =
    "an earlier plan (its --format json): what need not move stays where it was, and what moved is told; never at the cost of a promise or "
    "of "
    "an earlier end";

Outcome run(const Arguments& arguments, const World& world) {
  const auto made = planned(arguments, world, job::AdviceDepth::quick);
  if (!made) return made.error();
  const int status = status_of(made->plan(), arguments.strict);
  if (arguments.format == Format::json) return {status, report::plan_json(made->plan(), version(), made->finished.advice()), ""};
  const report::TextStyle shown = text_style(arguments, world, made->job.shop.units);
  return {status, report::plan_text(made->plan(), made->job.order.name, shown, made->finished.advice()), ""};
}

}  // namespace

Command plan_command() {
  return {
      "plan", {told(orders(), orders_help), format(), from(), told(keep(), keep_help), effort(), units(), strict(), colour()}, about, run};
}

}  // namespace coatday::cli
