#include "report/papers/card.h"

#include "cli/commands.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "report/document/render_text.h"

namespace coatday::cli {
namespace {

const About about{
    "Reads an order, plans it, and prints the customer's card: what each piece was finished with, from when it may "
    "be used how, what to leave until then, how wood moves and how to look after it. Below a line, to be cut off: "
    "what that rests on.",
    {"ORDER.yaml... [options]"},
    {"order.yaml > card.txt"},
    "Its dates are the first whole days after the late side. Write what was done into the order's history first, and "
    "they are those of the piece as it is."};

Outcome run(const Arguments& arguments, const World& world) {
  return printed(arguments, world, [](const job::Plan& plan, const job::Job& job, const report::TextStyle& shown) {
    return report::render_text(report::card(plan, job, report::texts_of(plan, shown.units)), {shown.units, false, shown.columns});
  });
}

}  // namespace

Command card_command() { return {"card", {orders(), from(), keep(), effort(), units()}, about, run}; }

}  // namespace coatday::cli
