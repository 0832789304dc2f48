#include "report/files/calendar.h"

#include <fmt/core.h>

#include "cli/commands.h"
#include "cli/help.h"
#include "cli/options.h"
#include "cli/output_file.h"
#include "cli/planned.h"
#include "report/files/tables.h"
#include "report/papers/report.h"

namespace coatday::cli {
namespace {

const About about{
    "Reads an order, plans it, and writes the plan for the calendar of a phone or a computer: a timed entry with an "
    "alarm for every hands-on step, and days from which a piece may be wrapped, delivered and fully used, by the "
    "late side.",
    {"ORDER.yaml... [-o FILE] [options]"},
    {"order.yaml -o plan.ics"},
    "Import the file of a plan made anew over the old one: entries keep their ids and move. A step that is no longer "
    "in the plan stays in the calendar until you take it out."};

Outcome run(const Arguments& arguments, const World& world) {
  const bool table = arguments.format == Format::csv;
  const std::string mark = table ? report::calendar_csv_header() : std::string(report::calendar_mark);
  if (const auto refused = refused_output(arguments, mark)) return *refused;
  const auto made = planned(arguments, world, job::AdviceDepth::when_late);
  if (!made) return made.error();
  const job::Plan& plan = made->plan();
  const std::string& order = made->job.order.name;
  const int status = status_of(plan, false);
  const report::TextStyle shown = text_style(arguments, world, plan.shop.units);
  if (plan.status != job::Status::feasible) return {status, "", report::plan_text(plan, order, shown)};
  const std::string content =
      table ? report::calendar_csv(plan, order, shown.units) : report::calendar_ics(plan, order, shown.units, world.now, version());
  const std::string file = report::harmless_text(arguments.output);
  Outcome outcome =
      to_output(arguments, status, content, mark, fmt::format("{}: {} steps and the days of hand-over\n", file, plan.events.size()));
  if (status != done) outcome.err = report::findings_text(plan.findings, order, shown);
  return outcome;
}

}  // namespace

Command calendar_command() {
  return {"calendar",
          {orders(), told(output(), "the file to write, whole or not at all (default: standard output)"), calendar_format(), force(),
           from(), keep(), effort(), units()},
          about,
          run};
}

}  // namespace coatday::cli
