#include "report/card.h"

#include "cli/commands.h"
#include "cli/options.h"
#include "cli/planned.h"

namespace coatday::cli {
namespace {

constexpr std::string_view help_text = R"(Reads an order, plans it, and prints the customer's card: what each piece was
finished with, from when it may be used how, what to leave until then, how wood
moves and how to look after it. Below a line, to be cut off: what that rests on.

Usage: coatday card ORDER.yaml... [options]

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

Its dates are the first whole days after the late side. Write what was done into
the order's history first, and they are those of the piece as it is.

Example: coatday card order.yaml > card.txt
)";

Outcome run(const Arguments& arguments, const World& world) {
  return printed(arguments, world, [](const plan::Plan& plan, const plan::Job& job, const report::Look& shown) {
    return report::card_text(plan, job, shown);
  });
}

}  // namespace

Command card_command() { return {"card", {orders(), from(), keep(), effort(), units()}, help_text, run}; }

}  // namespace coatday::cli
