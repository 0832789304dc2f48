#include "cli/commands.h"
#include "cli/planned.h"
#include "report/report.h"

namespace coatday::cli {

Outcome buy_command(const Arguments& arguments, const World& world) {
  const auto made = planned(arguments, world);
  if (!made) return made.error();
  const report::Look shown = look(arguments, world, made->job.shop.units);
  return {status_of(made->plan, false), report::buy_text(made->plan, made->job.order.name, shown), ""};
}

}  // namespace coatday::cli
