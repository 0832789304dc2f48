#include "cli/commands.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "plan/planner.h"
#include "report/report.h"

namespace coatday::cli {
namespace {

constexpr std::string_view help_text = R"(Reads an order and prints what is wrong with it before any planning: faces that
would be left behind, products that do not go over each other, missing places.

Usage: coatday check ORDER.yaml... [options]

  ORDER.yaml...     one order, or several that name the same shop file
  --strict          exit status 1 when there is any warning
  --colour WHEN     never, auto (on a terminal, unless NO_COLOR is set) or
                    always (default auto)
  -h, --help        this text

Example: coatday check order.yaml --strict
)";

Outcome run(const Arguments& arguments, const World& world) {
  const auto job = load(arguments, world);
  if (!job) return job.error();
  const std::vector<plan::Finding> found = plan::judge(*job);
  return {status_of(found, arguments.strict), report::findings_text(found, job->order.name, look(arguments, world, job->shop.units)), ""};
}

}  // namespace

Command check_command() { return {"check", {orders(), strict(), colour()}, help_text, run}; }

}  // namespace coatday::cli
