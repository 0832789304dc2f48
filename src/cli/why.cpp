#include "report/papers/why.h"
#include "cli/commands.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "quantity/nearest.h"
#include "report/document/render_text.h"
#include "report/papers/report.h"

namespace coatday::cli {
namespace {

const About about{
    "Reads an order, plans it, and prints why one step starts when it does: what it waits for, what it must not "
    "miss, and the air at the time.",
    {"ORDER.yaml... [EVENT] [options]"},
    {"order.yaml table/top/clear-2"}};

Outcome no_such_event(const Arguments& arguments, const job::Plan& plan) {
  std::string orders;
  for (const std::string& order : arguments.orders) orders += (orders.empty() ? "" : " ") + order;
  std::vector<std::string> ids;
  for (const job::Event& event : plan.events) ids.push_back(event.id);
  const auto meant = nearest_word(arguments.name, ids);
  return mistaken("the plan has no event '" + arguments.name + "'" + (meant ? "; did you mean '" + *meant + "'?" : "") + " (coatday why " +
                  orders + " lists them)");
}

Outcome run(const Arguments& arguments, const World& world) {
  const auto made = planned(arguments, world, job::AdviceDepth::when_late);
  if (!made) return made.error();
  const report::TextStyle shown = text_style(arguments, world, made->job.shop.units);
  const int status = status_of(made->plan(), false);
  if (made->plan().status != job::Status::feasible) return {status, report::plan_text(made->plan(), made->job.order.name, shown), ""};
  const report::Texts texts = report::texts_of(made->plan(), shown.units);
  if (arguments.name.empty()) return {status, report::render_text(report::events(made->plan(), texts), shown), ""};
  const auto why = report::why(made->plan(), arguments.name, texts);
  return why ? Outcome{status, report::render_text(*why, shown), ""} : no_such_event(arguments, made->plan());
}

}  // namespace

Command why_command() { return {"why", {orders_and_event(), from(), keep(), effort(), units(), colour()}, about, run}; }

}  // namespace coatday::cli
