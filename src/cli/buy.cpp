#include "cli/commands.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "report/report.h"
#include "report/tables.h"

namespace coatday::cli {
namespace {

constexpr std::string_view help_text = R"(Reads an order, plans it, and prints what has to be bought: need, what is on the
shelf, cans, left over and cost, then abrasives and other small things.

Usage: coatday buy ORDER.yaml... [options]

  ORDER.yaml...     one order, or several that name the same shop file
  --format FORMAT   text for people or csv for spreadsheets (default text)
  --from TIME       nothing starts before it, as in "2027-01-11 08:00", in the
                    shop's time zone (default: the order's start, else now,
                    rounded up to 5 min)
  --keep OLD.json   an earlier plan (its --format json): what need not move
                    stays where it was
  --effort EFFORT   quick (the first good plan), thorough (up to 30 s more for a
                    better one, or a proof that none is) or so many seconds;
                    Ctrl-C ends it with the best so far (default quick)
  --units UNITS     us or metric (default: the shop's)
  --colour WHEN     never, auto (on a terminal, unless NO_COLOR is set) or
                    always (default auto)
  -h, --help        this text

Example: coatday buy order.yaml --units us
)";

Outcome run(const Arguments& arguments, const World& world) {
  const auto made = planned(arguments, world);
  if (!made) return made.error();
  const report::Look shown = look(arguments, world, made->job.shop.units);
  if (arguments.format == Format::csv && made->plan.status == plan::Status::feasible)
    return {status_of(made->plan, false), report::buy_csv(made->plan, shown.units), ""};
  return {status_of(made->plan, false), report::buy_text(made->plan, made->job.order.name, shown), ""};
}

}  // namespace

Command buy_command() { return {"buy", {orders(), text_or_table(), from(), keep(), effort(), units(), colour()}, help_text, run}; }

}  // namespace coatday::cli
