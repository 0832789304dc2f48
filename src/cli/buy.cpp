#include "cli/commands.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "report/files/tables.h"
#include "report/papers/report.h"

namespace coatday::cli {
namespace {

const About about{
    "Reads an order, plans it, and prints what has to be bought: need, what is on the shelf, cans, left over and "
    "cost, then abrasives and other small things.",
    {"ORDER.yaml... [options]"},
    {"order.yaml --units us"}};

Outcome run(const Arguments& arguments, const World& world) {
  const auto made = planned(arguments, world, job::AdviceDepth::when_late);
  if (!made) return made.error();
  const report::TextStyle shown = text_style(arguments, world, made->job.shop.units);
  if (arguments.format == Format::csv && made->plan().status == job::Status::feasible)
    return {status_of(made->plan(), false), report::buy_csv(made->plan(), shown.units), ""};
  return {status_of(made->plan(), false), report::buy_text(made->plan(), made->job.order.name, shown), ""};
}

}  // namespace

Command buy_command() { return {"buy", {orders(), text_or_table(), from(), keep(), effort(), units(), colour()}, about, run}; }

}  // namespace coatday::cli
