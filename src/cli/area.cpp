#include "cli/commands.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "plan/planner.h"
#include "report/report.h"
#include "report/tables.h"

namespace coatday::cli {
namespace {

constexpr std::string_view help_text = R"(Reads an order and prints the area of every face that is coated, by piece and
part, with the sums. Masked areas are taken off.

Usage: coatday area ORDER.yaml... [options]

  ORDER.yaml...     one order, or several that name the same shop file
  --format FORMAT   text for people or csv for spreadsheets (default text)
  --units UNITS     us or metric (default: the shop's)
  --colour WHEN     never, auto (on a terminal, unless NO_COLOR is set) or
                    always (default auto)
  -h, --help        this text

Example: coatday area order.yaml --units us
)";

Outcome run(const Arguments& arguments, const World& world) {
  const auto job = load(arguments, world);
  if (!job) return job.error();
  std::vector<std::string> pieces;
  for (const plan::OrderPiece& piece : job->order.pieces) pieces.push_back(piece.piece.name);
  const std::vector<plan::FaceEntry> faces = plan::take_off(*job);
  if (arguments.format == Format::csv) return {done, report::area_csv(faces, pieces), ""};
  return {done, report::area_text(faces, pieces, look(arguments, world, job->shop.units)), ""};
}

}  // namespace

Command area_command() { return {"area", {orders(), text_or_table(), units(), colour()}, help_text, run}; }

}  // namespace coatday::cli
