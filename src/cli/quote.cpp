#include "report/papers/quote.h"

#include "cli/commands.h"
#include "cli/help.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "report/document/render_text.h"
#include "report/files/json_quote.h"

namespace coatday::cli {
namespace {

const About about{
    "Reads an order, plans it, and prints what a price rests on before it is taken: hours of work, materials, days "
    "of work and of drying, and the earliest date that can honestly be promised. The shop file's rates make money of "
    "it.",
    {"ORDER.yaml... [options]"},
    {"order.yaml --from \"2027-03-01 08:00\""}};

constexpr const char* set_help =
    "a key of the order or the shop with another value, as in \"rates.hour=55\" or \"schedule=oil-three-coats\"; may be repeated";

Outcome run(const Arguments& arguments, const World& world) {
  const auto rates = load_rates(arguments, world);
  if (!rates) return rates.error();
  return printed(arguments, world, [&](const job::Plan& plan, const job::Job& job, const report::TextStyle& shown) {
    const job::Quote quote = job::quote(plan, *rates);
    if (arguments.format == Format::json) return report::quote_json(plan, quote, *rates, job.order.name, version());
    return report::render_text(report::quote(plan, quote, *rates, job.order.name, report::texts_of(plan, shown.units)), shown);
  });
}

}  // namespace

Command quote_command() { return {"quote", {orders(), format(), from(), told(set(), set_help), effort(), units(), colour()}, about, run}; }

}  // namespace coatday::cli
