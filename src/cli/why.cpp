#include "report/papers/why.h"
#include "cli/commands.h"
#include "cli/options.h"
#include "cli/view.h"
#include "job/id_here.h"

namespace coatday::cli {
namespace {

Outcome no_such_event(const View& view) {
  const std::string& name = view.arguments.name;
  std::string orders;
  for (const std::string& order : view.arguments.orders) orders += (orders.empty() ? "" : " ") + order;
  Args ids;
  for (const job::Event& event : view.plan().events) ids.push_back(event.id);
  return mistaken("the plan has no event '" + name + "'" + suggestion(name, ids) + " (coatday why " + orders + " lists them)");
}

Outcome why_text(const View& view) {
  if (!view.is_planned()) return answer(view, reasons(view));
  if (view.arguments.name.empty()) return answer(view, report::events(view.plan(), texts(view)));
  const auto why = report::why(view.plan(), job::id_here(view.job().order, view.arguments.name), texts(view));
  return why ? answer(view, *why) : no_such_event(view);
}

}  // namespace

Command why_command() {
  return {
      .name = "why",
      .group = groups::questions,
      .needs = Needs::plan,
      .advice = job::AdviceDepth::when_late,
      .options = {orders_and_event(), from(), keep(), effort(), units(), colour()},
      .outputs = {{"text", "for people", why_text}},
      .about = {.brief = "why a step of the plan starts when it does",
                .summary = "Reads an order, plans it, and prints why one step starts when it does: what it waits for, what it must not "
                           "miss, and the air at the time.",
                .usage = {"ORDER.yaml... [EVENT]"},
                .examples = {"order.yaml table/top/clear-2"}},
  };
}

}  // namespace coatday::cli
