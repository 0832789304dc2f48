#include "cli/commands.h"
#include "cli/planned.h"
#include "plan/planner.h"
#include "report/report.h"

namespace coatday::cli {

Outcome area_command(const Arguments& arguments, const World& world) {
  const auto job = load(arguments, world);
  if (!job) return job.error();
  std::vector<std::string> pieces;
  for (const plan::OrderPiece& piece : job->order.pieces) pieces.push_back(piece.piece.name);
  return {done, report::area_text(plan::take_off(*job), pieces, look(arguments, world, job->shop.units)), ""};
}

}  // namespace coatday::cli
