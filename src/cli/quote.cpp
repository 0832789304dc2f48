#include "report/quote.h"

#include "cli/commands.h"
#include "cli/help.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "report/report.h"

namespace coatday::cli {
namespace {

constexpr std::string_view help_text = R"(Reads an order, plans it, and prints what a price rests on before it is taken:
hours of work, materials, days of work and of drying, and the earliest date that
can honestly be promised. The shop file's rates make money of it.

Usage: coatday quote ORDER.yaml... [options]

  ORDER.yaml...     one order, or several that name the same shop file
  --format FORMAT   text for people or json for programs (default text)
  --from TIME       nothing starts before it, as in "2027-01-11 08:00", in the
                    shop's time zone (default: the order's start, else now,
                    rounded up to 5 min)
  --set KEY=VALUE   a key of the order or the shop with another value, as in
                    "rates.hour=55" or "schedule=oil-three-coats"; may be
                    repeated
  --effort EFFORT   quick (the first good plan), thorough (up to 30 s more for a
                    better one, or a proof that none is) or so many seconds;
                    Ctrl-C ends it with the best so far (default quick)
  --units UNITS     us or metric (default: the shop's)
  --colour WHEN     never, auto (on a terminal, unless NO_COLOR is set) or
                    always (default auto)
  -h, --help        this text

Example: coatday quote order.yaml --from "2027-03-01 08:00"
)";

Outcome run(const Arguments& arguments, const World& world) {
  const auto rates = load_rates(arguments, world);
  if (!rates) return rates.error();
  const auto made = planned(arguments, world);
  if (!made) return made.error();
  const plan::Plan& plan = made->plan;
  const std::string& order = made->job.order.name;
  const report::Look shown = look(arguments, world, plan.shop.units);
  const int status = status_of(plan, false);
  if (plan.status != plan::Status::feasible) return {status, "", report::plan_text(plan, order, shown)};
  const plan::Quote quote = plan::quote(plan, *rates);
  const bool json = arguments.format == Format::json;
  return {status, json ? report::quote_json(plan, quote, *rates, order, version()) : report::quote_text(plan, quote, *rates, order, shown),
          status == done ? "" : report::findings_text(plan.findings, order, shown)};
}

}  // namespace

Command quote_command() { return {"quote", {orders(), format(), from(), set(), effort(), units(), colour()}, help_text, run}; }

}  // namespace coatday::cli
