#include "report/papers/area.h"
#include "cli/commands.h"
#include "cli/options.h"
#include "cli/view.h"
#include "report/files/tables.h"

namespace coatday::cli {
namespace {

Args pieces_of(const View& view) {
  Args pieces;
  for (const job::OrderPiece& piece : view.job().order.pieces) pieces.push_back(piece.piece.name);
  return pieces;
}

Outcome area_text(const View& view) { return answer(view, report::area(planner::take_off(view.job()), pieces_of(view), texts(view))); }
Outcome area_csv(const View& view) { return answer(view, report::area_csv(planner::take_off(view.job()), pieces_of(view))); }

}  // namespace

Command area_command() {
  return {
      .name = "area",
      .group = groups::before_planning,
      .needs = Needs::job,
      .options = {orders(), units(), colour()},
      .outputs = {{"text", "for people", area_text}, {"csv", "for spreadsheets", area_csv}},
      .about = {.brief = "the area of every face that is coated",
                .summary =
                    "Reads an order and prints the area of every face that is coated, by piece and part, with the sums. Masked areas "
                    "are taken off.",
                .usage = {"ORDER.yaml..."},
                .examples = {"order.yaml --units us"}},
  };
}

}  // namespace coatday::cli
