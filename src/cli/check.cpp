#include "cli/commands.h"
#include "cli/planned.h"
#include "plan/planner.h"
#include "report/report.h"

namespace coatday::cli {

Outcome check_command(const Arguments& arguments, const World& world) {
  const auto job = load(arguments, world);
  if (!job) return job.error();
  const std::vector<plan::Finding> found = plan::judge(*job);
  return {status_of(found, arguments.strict), report::findings_text(found, job->order.name, look(arguments, world, job->shop.units)), ""};
}

}  // namespace coatday::cli
