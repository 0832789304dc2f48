#include "cli/commands.h"
#include "cli/options.h"
#include "cli/view.h"
#include "report/files/tables.h"
#include "report/papers/report.h"

namespace coatday::cli {
namespace {

Outcome buy_text(const View& view) { return answer(view, report::buy_text(view.plan(), view.order(), view.style)); }
Outcome buy_csv(const View& view) {
  return view.is_planned() ? answer(view, report::buy_csv(view.plan(), view.style.units)) : buy_text(view);
}

}  // namespace

Command buy_command() {
  return {
      .name = "buy",
      .group = groups::plan,
      .needs = Needs::plan,
      .advice = job::AdviceDepth::when_late,
      .options = {orders(), from(), keep(), effort(), units(), colour()},
      .outputs = {{"text", "for people", buy_text}, {"csv", "for spreadsheets", buy_csv}},
      .about = {.brief = "what has to be bought for it",
                .summary = "Reads an order, plans it, and prints what has to be bought: need, what is on the shelf, cans, left over and "
                           "cost, then abrasives and other small things.",
                .usage = {"ORDER.yaml..."},
                .examples = {"order.yaml --units us"}},
  };
}

}  // namespace coatday::cli
