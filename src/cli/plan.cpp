#include "cli/commands.h"
#include "cli/options.h"
#include "cli/version.h"
#include "cli/view.h"
#include "report/files/json.h"
#include "report/papers/report.h"

namespace coatday::cli {
namespace {

constexpr const char* orders_help =
    "one order, or several that name the same shop file and share its people, hours and places. Finishes that any of them names count for "
    "all. Where two orders have a piece with the same id, its order's name comes before it";
constexpr const char* keep_help =
    "an earlier plan (its --format json): steps keep their old start unless something forces them to move, but never at the cost of a "
    "promise or of an earlier end. The plan lists what moved";

Outcome plan_text(const View& view) { return answer(view, report::plan_text(view.plan(), view.order(), view.style, view.advice())); }
Outcome plan_json(const View& view) { return answer(view, report::plan_json(view.plan(), version(), view.advice())); }

}  // namespace

Command plan_command() {
  return {
      .name = "plan",
      .group = groups::plan,
      .needs = Needs::plan,
      .advice = job::AdviceDepth::quick,
      .options = {with_help(orders(), orders_help), from(), with_help(keep(), keep_help), effort(), units(), strict(), colour()},
      .outputs = {{"text", "for people", plan_text}, {"json", "for programs", plan_json}},
      .about = {.brief = "the whole plan, day by day, of one order or several",
                .summary = "Reads an order, with the shop and finishes that it names, and prints the plan: summary, days, faces, what to "
                           "buy, hand-over, cautions.",
                .usage = {"ORDER.yaml..."},
                .examples = {"kitchen.yaml table.yaml --keep monday.json"}},
  };
}

}  // namespace coatday::cli
