#include "report/wood.h"
#include "cli/commands.h"
#include "cli/options.h"
#include "cli/planned.h"

namespace coatday::cli {
namespace {

constexpr std::string_view help_text = R"(Prints the moisture content at which wood settles in an air, and how much a
board that comes from another air moves across its grain until it has settled.

Usage: coatday wood --at AIR [options]

  --at AIR          a temperature and a humidity, such as "70 F 65 %"
  --species NAME    of the board: red-oak, hard-maple, walnut
  --width LENGTH    of the board across its grain, in the air it comes from:
                    "22 in", "560 mm"
  --cut CUT         flat, quarter, or the angle between the growth rings and
                    the face: "35 deg"
  --from AIR        the air it comes from, such as "70 F 35 %"; these four
                    belong together
  --format FORMAT   text or json (default text)
  --units UNITS     us or metric (default metric)
  --colour WHEN     never, auto (on a terminal, unless NO_COLOR is set) or
                    always (default auto)
  -h, --help        this text

Moisture content from 6 to 14 % alone has a movement: outside, the handbook's
coefficients do not hold, and the command says so.

Example: coatday wood --at "70 F 65 %" --species red-oak --width "22 in"
         --cut flat --from "70 F 35 %"
)";

tl::expected<std::optional<report::MovedBoard>, Outcome> moved_board(const Arguments& arguments) {
  const BoardAsked& asked = arguments.board;
  const std::vector<std::pair<const char*, bool>> given{{"--species", !asked.species.empty()},
                                                        {"--width", asked.width.has_value()},
                                                        {"--cut", asked.cut.has_value()},
                                                        {"--from", asked.from.has_value()}};
  std::string missing, first;
  for (const auto& [option, is_given] : given) {
    if (is_given && first.empty()) first = option;
    if (!is_given) missing += (missing.empty() ? "" : ", ") + std::string(option);
  }
  if (first.empty()) return std::nullopt;
  if (!missing.empty()) return tl::make_unexpected(mistaken(first + " needs " + missing + " beside it (coatday wood --help says more)"));
  return report::MovedBoard{wood::find_species(asked.species), *asked.width, *asked.cut, *asked.from};
}

Outcome run(const Arguments& arguments, const World& world) {
  const auto board = moved_board(arguments);
  if (!board) return board.error();
  const report::Look shown = look(arguments, world, Units::metric);
  if (const auto reason = report::no_wood_at(*arguments.at, *board, shown.units)) return {no_plan, "", "coatday: " + *reason + "\n"};
  return {
      done,
      arguments.format == Format::json ? report::wood_at_json(*arguments.at, *board) : report::wood_at_text(*arguments.at, *board, shown),
      ""};
}

}  // namespace

Command wood_command() {
  Option air = at();
  air.needed = true;
  return {"wood", {air, species(), width(), cut(), from_air(), format(), units(), colour()}, help_text, run};
}

}  // namespace coatday::cli
