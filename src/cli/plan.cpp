#include "cli/commands.h"
#include "cli/help.h"
#include "cli/planned.h"
#include "report/json.h"
#include "report/report.h"

namespace coatday::cli {

Outcome plan_command(const Arguments& arguments, const World& world) {
  const auto made = planned(arguments, world);
  if (!made) return made.error();
  const int status = status_of(made->plan, arguments.strict);
  if (arguments.format == Format::json) return {status, report::plan_json(made->plan, version()), ""};
  return {status, report::plan_text(made->plan, made->job.order.name, look(arguments, world, made->job.shop.units)), ""};
}

}  // namespace coatday::cli
