#include "report/papers/wood.h"

#include "cli/commands.h"
#include "cli/help.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "report/document/render_text.h"
#include "report/files/json_wood.h"
#include "report/papers/report.h"
#include "report/papers/wood_at.h"

namespace coatday::cli {
namespace {

const About about{
    "Says of an order's wood whether it is ready to be coated, how its boards cup when they are finished as planned "
    "and in other ways, and how they move on their base through the seasons. With --at: the moisture content at "
    "which wood settles in an air, and how much a board from another air moves across its grain.",
    {"ORDER.yaml... [options]", "--at AIR [options]"},
    {"order.yaml",
     "--at \"70\u00a0F\u00a065\u00a0%\" --species red-oak --width \"22\u00a0in\" --cut flat --from \"70\u00a0F\u00a035\u00a0%\""},
    "Moisture content from 6 to 14 % alone has a movement: outside, the handbook's coefficients do not hold, and the "
    "command says so."};

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

/// Of its plan: the coats' own dates.
Outcome of_orders(const Arguments& arguments, const World& world) {
  if (!arguments.board.species.empty() || arguments.board.width || arguments.board.cut || arguments.board.from || arguments.at)
    return mistaken("an order says which wood it is of and in which air; leave out --at, --species, --width and --cut");
  const auto made = planned(arguments, world, job::AdviceDepth::none);
  if (!made) return made.error();
  const report::TextStyle shown = text_style(arguments, world, made->job.shop.units);
  const int status = status_of(made->plan(), false);
  if (made->plan().status != job::Status::feasible) return {status, report::plan_text(made->plan(), made->job.order.name, shown), ""};
  const job::WoodFindings wood = planner::wood_findings(made->job, made->finished);
  if (arguments.format == Format::json) return {status, report::wood_json(made->job, made->plan(), wood, version()), ""};
  return {status, report::wood_text(made->job, made->plan(), wood, shown), ""};
}

Outcome run(const Arguments& arguments, const World& world) {
  if (!arguments.orders.empty()) return of_orders(arguments, world);
  if (!arguments.at) return mistaken("wood needs an order, or --at with an air (coatday wood --help says more)");
  if (arguments.from || !arguments.set.empty()) return mistaken("--from with a time, and --set, go with an order");
  const auto board = moved_board(arguments);
  if (!board) return board.error();
  const report::TextStyle shown = text_style(arguments, world, Units::metric);
  if (const auto reason = report::no_wood_at(*arguments.at, *board, shown.units)) return {no_plan, "", "coatday: " + *reason + "\n"};
  return {done,
          arguments.format == Format::json ? report::wood_at_json(*arguments.at, *board)
                                           : report::render_text(report::wood_at(*arguments.at, *board, shown.units), shown),
          ""};
}

}  // namespace

Command wood_command() {
  Option order = orders();
  order.needed = false;
  return {"wood",
          {order, told(set(), "a key of the order or the shop file and its value as written there, as in \"cut=quarter\"; may be repeated"),
           at(), species(), width(), cut(), from_air_or_time(), told(format(), "text or json (default text)"),
           told(units(), "us or metric (default: the shop's, else metric)"), colour()},
          about,
          run};
}

}  // namespace coatday::cli
