#include "cli/commands.h"
#include "cli/help.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "report/json.h"
#include "report/report.h"

namespace coatday::cli {
namespace {

constexpr std::string_view help_text = R"(Reads an order, with the shop and finishes that it names, and prints the plan:
summary, days, faces, what to buy, hand-over, cautions.

Usage: coatday plan ORDER.yaml... [options]

  ORDER.yaml...     one order, or several that name the same shop file and share
                    its people, hours and places. Finishes that any of them
                    names count for all; a piece whose id two orders have gets
                    its order's name before it
  --format FORMAT   text for people or json for programs (default text)
  --from TIME       nothing starts before it, as in "2027-01-11 08:00", in the
                    shop's time zone (default: the order's start, else now,
                    rounded up to 5 min)
  --keep OLD.json   an earlier plan (its --format json): what need not move
                    stays where it was, and what moved is told; never at the
                    cost of a promise or of an earlier end
  --effort EFFORT   quick (the first good plan), thorough (up to 30 s more for a
                    better one, or a proof that none is) or so many seconds;
                    Ctrl-C ends it with the best so far (default quick)
  --units UNITS     us or metric (default: the shop's)
  --strict          exit status 1 when there is any warning
  --colour WHEN     never, auto (on a terminal, unless NO_COLOR is set) or
                    always (default auto)
  -h, --help        this text

Example: coatday plan kitchen.yaml table.yaml --keep monday.json
)";

Outcome run(const Arguments& arguments, const World& world) {
  const auto made = planned_with_advice(arguments, world);
  if (!made) return made.error();
  const int status = status_of(made->plan, arguments.strict);
  if (arguments.format == Format::json) return {status, report::plan_json(made->plan, version(), made->advice), ""};
  const report::Look shown = look(arguments, world, made->job.shop.units);
  return {status, report::plan_text(made->plan, made->job.order.name, shown, made->advice), ""};
}

}  // namespace

Command plan_command() { return {"plan", {orders(), format(), from(), keep(), effort(), units(), strict(), colour()}, help_text, run}; }

}  // namespace coatday::cli
