#include "report/sheet.h"

#include "cli/commands.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "report/report.h"

namespace coatday::cli {
namespace {

constexpr std::string_view help_text = R"(Reads an order, plans it, and prints sheets to work from, a page for each day
with work: steps with a box to tick, faces, product, grit, mix, until when it is
wet, cautions, and room to write down when it was done and in which air.

Usage: coatday sheet ORDER.yaml... [options]

  ORDER.yaml...     one order, or several that name the same shop file
  --from TIME       nothing starts before it, as in "2027-01-11 08:00", in the
                    shop's time zone (default: the order's start, else now,
                    rounded up to 5 min)
  --keep OLD.json   an earlier plan (its --format json): what need not move
                    stays where it was
  --effort EFFORT   quick (the first good plan), thorough (up to 30 s more for a
                    better one, or a proof that none is) or so many seconds;
                    Ctrl-C ends it with the best so far (default quick)
  --units UNITS     us or metric (default: the shop's)
  -h, --help        this text

Pages have 80 columns and up to 60 lines, with a form feed between them.

Example: coatday sheet order.yaml | lp
)";

Outcome run(const Arguments& arguments, const World& world) {
  return printed(arguments, world, [](const plan::Plan& plan, const plan::Job& job, const report::Look& shown) {
    return report::sheet_text(plan, job.order.name, shown);
  });
}

}  // namespace

Command sheet_command() { return {"sheet", {orders(), from(), keep(), effort(), units()}, help_text, run}; }

}  // namespace coatday::cli
