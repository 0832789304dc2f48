#include "report/papers/wood.h"

#include "cli/commands.h"
#include "cli/options.h"
#include "cli/version.h"
#include "cli/view.h"
#include "report/document/render_text.h"
#include "report/files/json_wood.h"
#include "report/papers/report.h"
#include "report/papers/wood_at.h"

namespace coatday::cli {
namespace {

constexpr const char* set_help =
    "a key of the order or the shop file and its value as written there, as in \"cut=quarter\"; may be repeated";

/// The four options of a board belong together.
std::optional<std::string> board_misuse(const BoardAsked& board) {
  const std::vector<std::pair<const char*, bool>> given{{"--species", !board.species.empty()},
                                                        {"--width", board.width.has_value()},
                                                        {"--cut", board.cut.has_value()},
                                                        {"--from", board.from.has_value()}};
  std::string missing, first;
  for (const auto& [option, is_given] : given) {
    if (is_given && first.empty()) first = option;
    if (!is_given) missing += (missing.empty() ? "" : ", ") + std::string(option);
  }
  if (first.empty() || missing.empty()) return std::nullopt;
  return first + " needs " + missing + " beside it (coatday wood --help says more)";
}

std::optional<std::string> wood_misuse(const Arguments& arguments) {
  const BoardAsked& board = arguments.board;
  const bool has_board = !board.species.empty() || board.width || board.cut || board.from;
  if (!arguments.orders.empty()) {
    if (!has_board && !arguments.at) return std::nullopt;
    return "an order says which wood it is of and in which air; leave out --at, --species, --width and --cut";
  }
  if (!arguments.at) return "wood needs an order, or --at with an air (coatday wood --help says more)";
  if (arguments.from || !arguments.set.empty()) return "--from with a time, and --set, go with an order";
  return board_misuse(board);
}

std::optional<report::MovedBoard> moved_board(const View& view) {
  const BoardAsked& board = view.arguments.board;
  if (!board.from) return std::nullopt;
  return report::MovedBoard{wood::find_species(board.species), *board.width, *board.cut, *board.from};
}

/// Why wood in the air that is asked about has no answer.
std::optional<Outcome> no_wood_at(const View& view) {
  const auto reason = report::no_wood_at(*view.arguments.at, moved_board(view), view.style.units);
  return reason ? std::optional(Outcome{no_plan, "", "coatday: " + *reason + "\n"}) : std::nullopt;
}

Outcome wood_text(const View& view) {
  if (view.finished) {
    if (!view.is_planned()) return answer(view, reasons(view));
    return answer(view, report::wood_of_order(view.job(), planner::wood_findings(view.job(), *view.finished), texts(view)));
  }
  const auto refused = no_wood_at(view);
  return refused ? *refused : answer(view, report::wood_at(*view.arguments.at, moved_board(view), view.style.units));
}

Outcome wood_json(const View& view) {
  if (view.finished) {
    if (!view.is_planned()) return {no_plan, "", reasons(view)};
    return answer(view, report::wood_json(view.job(), view.plan(), planner::wood_findings(view.job(), *view.finished), version()));
  }
  const auto refused = no_wood_at(view);
  return refused ? *refused : answer(view, report::wood_at_json(*view.arguments.at, moved_board(view)));
}

}  // namespace

Command wood_command() {
  Option order = orders();
  order.needed = false;
  return {
      .name = "wood",
      .group = groups::before_planning,
      .needs = Needs::plan,
      .options = {order, with_help(set(), set_help), at(), species(), width(), cut(), from_air_or_time(),
                  with_help(units(), "us or metric (default: the shop's, else metric)"), colour()},
      .outputs = {{"text", "for people", wood_text}, {"json", "for programs", wood_json}},
      .about = {.brief = "whether an order's wood is ready, how it cups and moves",
                .summary = "Says of an order's wood whether it is ready to be coated, how its boards cup when they are finished as planned "
                           "and in other ways, and how they move on their base through the seasons. With --at: the moisture content at "
                           "which wood settles in an air, and how much a board from another air moves across its grain.",
                .usage = {"ORDER.yaml...", "--at AIR"},
                .examples = {"order.yaml",
                             "--at \"70\u00a0F\u00a065\u00a0%\" --species red-oak --width \"22\u00a0in\" --cut flat --from "
                             "\"70\u00a0F\u00a035\u00a0%\""},
                .more = "Moisture content from 6 to 14 % alone has a movement: outside, the handbook's coefficients do not hold, and the "
                        "command says so."},
      .misuse = wood_misuse,
  };
}

}  // namespace coatday::cli
