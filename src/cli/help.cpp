#include "cli/help.h"

namespace coatday::cli {
namespace {

constexpr std::string_view program = R"(coatday plans the finishing of furniture made to order: which coat goes on which
face and when, what to buy, and when a piece may be handled, delivered and used.

Usage: coatday COMMAND ...

  plan ORDER.yaml...       the whole plan, day by day, of one order or several
  buy ORDER.yaml           what has to be bought for it
  why ORDER.yaml [EVENT]   why a step of the plan starts when it does
  check ORDER.yaml         judges the order without planning it
  area ORDER.yaml          the area of every face that is coated
  finishes [NAME]          the finish products, or all about one of them
  schedules [NAME]         the finishing schedules, or the steps of one of them

  -h, --help               this text; after a command, all about that command
  --version                the version of the program

Exit status: 0 all is well; 1 no plan is possible or a face would be left
behind; 2 a mistake in a file or on the command line; 3 a fault in coatday.

Example: coatday plan order.yaml
)";

constexpr std::string_view plan = R"(Reads an order, with the shop and finishes that it names, and prints the plan:
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

constexpr std::string_view buy = R"(Reads an order, plans it, and prints what has to be bought: need, what is on the
shelf, cans, left over and cost, then abrasives and other small things.

Usage: coatday buy ORDER.yaml... [options]

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
  --colour WHEN     never, auto (on a terminal, unless NO_COLOR is set) or
                    always (default auto)
  -h, --help        this text

Example: coatday buy order.yaml --units us
)";

constexpr std::string_view why = R"(Reads an order, plans it, and prints why one step starts when it does: what it
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

constexpr std::string_view check = R"(Reads an order and prints what is wrong with it before any planning: faces that
would be left behind, products that do not go over each other, missing places.

Usage: coatday check ORDER.yaml... [options]

  ORDER.yaml...     one order, or several that name the same shop file
  --strict          exit status 1 when there is any warning
  --colour WHEN     never, auto (on a terminal, unless NO_COLOR is set) or
                    always (default auto)
  -h, --help        this text

Example: coatday check order.yaml --strict
)";

constexpr std::string_view area = R"(Reads an order and prints the area of every face that is coated, by piece and
part, with the sums. Masked areas are taken off.

Usage: coatday area ORDER.yaml... [options]

  ORDER.yaml...     one order, or several that name the same shop file
  --units UNITS     us or metric (default: the shop's)
  --colour WHEN     never, auto (on a terminal, unless NO_COLOR is set) or
                    always (default auto)
  -h, --help        this text

Example: coatday area order.yaml --units us
)";

constexpr std::string_view finishes = R"(Prints the finish products that orders may name, or all about one of them: its
stages of drying, limits, coverage and the source of each value.

Usage: coatday finishes [NAME] [options]

  NAME              the id of a finish (default: lists them all)
  --own FILE        a file with finishes of your own; may be repeated
  --units UNITS     us or metric (default metric)
  --colour WHEN     never, auto (on a terminal, unless NO_COLOR is set) or
                    always (default auto)
  -h, --help        this text

Example: coatday finishes --own label.yaml
)";

constexpr std::string_view schedules = R"(Prints the finishing schedules that orders may name, or the steps of one of
them.

Usage: coatday schedules [NAME] [options]

  NAME              the id of a schedule (default: lists them all)
  --own FILE        a file with schedules of your own; may be repeated
  --units UNITS     us or metric (default metric)
  --colour WHEN     never, auto (on a terminal, unless NO_COLOR is set) or
                    always (default auto)
  -h, --help        this text

Example: coatday schedules --own label.yaml
)";

}  // namespace

std::string_view help(std::optional<Command> command) {
  if (!command) return program;
  switch (*command) {
    case Command::plan:
      return plan;
    case Command::buy:
      return buy;
    case Command::why:
      return why;
    case Command::check:
      return check;
    case Command::area:
      return area;
    case Command::finishes:
      return finishes;
    case Command::schedules:
      return schedules;
  }
  return program;
}

std::string_view version() { return COATDAY_VERSION; }

}  // namespace coatday::cli
