#include "report/papers/sheet.h"

#include "cli/commands.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "report/document/render_pages.h"

namespace coatday::cli {
namespace {

const About about{
    "Reads an order, plans it, and prints sheets to work from, a page for each day with work: steps with a box to "
    "tick, faces, product, grit, mix, until when it is wet, cautions, and room to write down when it was done and in "
    "which air.",
    {"ORDER.yaml... [options]"},
    {"order.yaml | lp"},
    "Pages have 80 columns and up to 60 lines, with a form feed between them."};

Outcome run(const Arguments& arguments, const World& world) {
  return printed(arguments, world, [](const job::Plan& plan, const job::Job& job, const report::TextStyle& shown) {
    return report::render_pages(report::sheet(plan, job.order.name, report::texts_of(plan, shown.units)), shown);
  });
}

}  // namespace

Command sheet_command() { return {"sheet", {orders(), from(), keep(), effort(), units()}, about, run}; }

}  // namespace coatday::cli
