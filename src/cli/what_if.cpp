#include "report/papers/what_if.h"
#include "cli/commands.h"
#include "cli/options.h"
#include "cli/version.h"
#include "cli/view.h"
#include "report/files/json_what_if.h"
#include "report/papers/advice.h"

namespace coatday::cli {
namespace {

Outcome what_if_text(const View& view) {
  if (view.without_set) {
    const job::Plan& before = view.without_set->plan();
    return answer(view, report::what_if(before, view.plan(), view.arguments.set, view.order(), texts(view)));
  }
  if (!view.is_planned()) return answer(view, reasons(view));
  return answer(view, report::advice_on_air(view.plan(), view.advice(), view.order(), texts(view)));
}

Outcome what_if_json(const View& view) {
  if (!view.without_set) return answer(view, report::advice_json(view.plan(), view.advice(), version()));
  return answer(view, report::what_if_json(view.without_set->plan(), view.plan(), view.arguments.set, version()));
}

}  // namespace

Command what_if_command() {
  return {
      .name = "what-if",
      .group = groups::questions,
      .needs = Needs::two_plans,
      .advice = job::AdviceDepth::thorough,
      .options = {orders(), set(), from(), effort(), units(), colour()},
      .outputs = {{"text", "for people", what_if_text}, {"json", "for programs", what_if_json}},
      .about = {.brief = "what a change would do, or which change helps most",
                .summary = "Reads an order and plans it twice, as it is and with keys set otherwise: ready dates, time to spare, what is "
                           "bought, heat, and which coats moved. Without --set it says which single change makes it ready a day or more "
                           "sooner: more places or people, warmer nights, warmer or drier air, another product of the same role.",
                .usage = {"ORDER.yaml... [--set KEY=VALUE]..."},
                .examples = {"order.yaml --set \"air.night=13 C\""}},
  };
}

}  // namespace coatday::cli
