#include "cli/commands.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "planner/planner.h"
#include "report/papers/report.h"

namespace coatday::cli {
namespace {

const About about{
    "Reads an order and prints what is wrong with it before any planning: faces that would be left behind, products "
    "that do not go over each other, missing places.",
    {"ORDER.yaml... [options]"},
    {"order.yaml --strict"}};

Outcome run(const Arguments& arguments, const World& world) {
  const auto job = load(arguments, world);
  if (!job) return job.error();
  const std::vector<job::Finding> found = planner::validate(*job);
  return {status_of(found, arguments.strict), report::findings_text(found, job->order.name, text_style(arguments, world, job->shop.units)),
          ""};
}

}  // namespace

Command check_command() { return {"check", {orders(), strict(), colour()}, about, run}; }

}  // namespace coatday::cli
