#include "report/papers/card.h"

#include "cli/commands.h"
#include "cli/options.h"
#include "cli/view.h"
#include "report/document/render_text.h"

namespace coatday::cli {
namespace {

Outcome card_text(const View& view) {
  const report::TextStyle on_paper{view.style.units, false, view.style.columns};
  return answer(view, report::render_text(report::card(view.plan(), view.job(), texts(view)), on_paper));
}

}  // namespace

Command card_command() {
  return {
      .name = "card",
      .group = groups::customer,
      .needs = Needs::plan,
      .advice = job::AdviceDepth::when_late,
      .options = {orders(), from(), keep(), effort(), units()},
      .outputs = {{"text", "for people", card_text}},
      .about = {.brief = "the customer's card: from when it may be used how",
                .summary = "Reads an order, plans it, and prints the customer's card: what each piece was finished with, from when it may "
                           "be used how, what to leave until then, how wood moves and how to look after it. Below a line, to be cut off: "
                           "what that rests on.",
                .usage = {"ORDER.yaml..."},
                .examples = {"order.yaml > card.txt"},
                .more = "Its dates are safe to promise, in whole days. Write what was done into the order's history first, and "
                        "they are those of the piece as it is."},
      .only_plans = true,
  };
}

}  // namespace coatday::cli
