#include "report/papers/quote.h"

#include "cli/commands.h"
#include "cli/options.h"
#include "cli/version.h"
#include "cli/view.h"
#include "report/files/json_quote.h"

namespace coatday::cli {
namespace {

constexpr const char* set_help =
    "a key of the order or the shop with another value, as in \"rates.hour=55\" or \"schedule=oil-three-coats\"; may be repeated";

Outcome quote_text(const View& view) {
  const shop::Rates& rates = view.files.rates;
  return answer(view, report::quote(view.plan(), job::quote(view.plan(), rates), rates, view.order(), texts(view)));
}
Outcome quote_json(const View& view) {
  const shop::Rates& rates = view.files.rates;
  return answer(view, report::quote_json(view.plan(), job::quote(view.plan(), rates), rates, view.order(), version()));
}

}  // namespace

Command quote_command() {
  return {
      .name = "quote",
      .group = groups::customer,
      .needs = Needs::plan,
      .advice = job::AdviceDepth::when_late,
      .options = {orders(), from(), with_help(set(), set_help), effort(), units(), colour()},
      .outputs = {{"text", "for people", quote_text}, {"json", "for programs", quote_json}},
      .about = {.brief = "hours, materials and an honest date, for a price",
                .summary = "Reads an order, plans it, and prints what a price rests on before it is taken: hours of work, materials, days "
                           "of work and of drying, and the earliest date that can honestly be promised. The shop file's rates make money "
                           "of it.",
                .usage = {"ORDER.yaml..."},
                .examples = {"order.yaml --from \"2027-03-01 08:00\""}},
      .only_plans = true,
  };
}

}  // namespace coatday::cli
