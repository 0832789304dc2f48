#include "cli/commands.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "quantity/nearest.h"
#include "report/report.h"

namespace coatday::cli {
namespace {

constexpr std::string_view help_text = R"(Reads an order, plans it, and prints why one step starts when it does: what it
waits for, what it must not miss, and the air at the time.

Usage: coatday why ORDER.yaml... [EVENT] [options]

  ORDER.yaml...     one order, or several that name the same shop file; the
                    names of the others end in .yaml
  EVENT             the id of a step (default: prints the ids of all steps)
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

Example: coatday why order.yaml table/top/clear-2
)";

Outcome no_such_event(const Arguments& arguments, const plan::Plan& plan) {
  std::string orders;
  for (const std::string& order : arguments.orders) orders += (orders.empty() ? "" : " ") + order;
  std::vector<std::string> ids;
  for (const plan::Event& event : plan.events) ids.push_back(event.id);
  const auto meant = nearest_word(arguments.name, ids);
  return mistaken("the plan has no event '" + arguments.name + "'" + (meant ? "; did you mean '" + *meant + "'?" : "") + " (coatday why " +
                  orders + " lists them)");
}

Outcome run(const Arguments& arguments, const World& world) {
  const auto made = planned(arguments, world);
  if (!made) return made.error();
  const report::Look shown = look(arguments, world, made->job.shop.units);
  const int status = status_of(made->plan, false);
  if (made->plan.status != plan::Status::feasible) return {status, report::plan_text(made->plan, made->job.order.name, shown), ""};
  if (arguments.name.empty()) return {status, report::events_text(made->plan, shown), ""};
  const auto text = report::why_text(made->plan, arguments.name, shown);
  return text ? Outcome{status, *text, ""} : no_such_event(arguments, made->plan);
}

}  // namespace

Command why_command() { return {"why", {orders_and_event(), from(), keep(), effort(), units(), colour()}, help_text, run}; }

}  // namespace coatday::cli
