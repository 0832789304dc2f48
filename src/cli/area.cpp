#include "report/papers/area.h"
#include "cli/commands.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "planner/planner.h"
#include "report/document/render_text.h"
#include "report/files/tables.h"

namespace coatday::cli {
namespace {

const About about{
    "Reads an order and prints the area of every face that is coated, by piece and part, with the sums. Masked areas "
    "are taken off.",
    {"ORDER.yaml... [options]"},
    {"order.yaml --units us"}};

Outcome run(const Arguments& arguments, const World& world) {
  const auto job = load(arguments, world);
  if (!job) return job.error();
  std::vector<std::string> pieces;
  for (const job::OrderPiece& piece : job->order.pieces) pieces.push_back(piece.piece.name);
  const std::vector<job::FaceEntry> faces = planner::take_off(*job);
  if (arguments.format == Format::csv) return {done, report::area_csv(faces, pieces), ""};
  const report::TextStyle shown = text_style(arguments, world, job->shop.units);
  return {done, report::render_text(report::area(faces, pieces, {shown.units, job->shop.zone}), shown), ""};
}

}  // namespace

Command area_command() { return {"area", {orders(), text_or_table(), units(), colour()}, about, run}; }

}  // namespace coatday::cli
