#include "report/papers/sheet.h"

#include "cli/commands.h"
#include "cli/options.h"
#include "cli/view.h"
#include "report/document/render_pages.h"

namespace coatday::cli {
namespace {

Outcome sheet_text(const View& view) {
  return answer(view, report::render_pages(report::sheet(view.plan(), view.order(), texts(view)), view.style));
}

}  // namespace

Command sheet_command() {
  return {
      .name = "sheet",
      .group = groups::plan,
      .needs = Needs::plan,
      .advice = job::AdviceDepth::when_late,
      .options = {orders(), from(), keep(), effort(), units()},
      .outputs = {{"text", "for people", sheet_text}},
      .about = {.brief = "sheets to work from and write on, a page a day",
                .summary = "Reads an order, plans it, and prints sheets to work from, a page for each day with work: steps with a box to "
                           "tick, faces, product, grit, mix, until when it is wet, cautions, and room to write down when it was done and "
                           "in which air.",
                .usage = {"ORDER.yaml..."},
                .examples = {"order.yaml | lp"},
                .more = "Pages have 80 columns and up to 60 lines, with a form feed between them."},
      .only_plans = true,
  };
}

}  // namespace coatday::cli
