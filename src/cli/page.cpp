#include "report/papers/page.h"

#include "cli/commands.h"
#include "cli/options.h"
#include "cli/view.h"
#include "report/document/render_html.h"
#include "report/figures/time_scale.h"

namespace coatday::cli {
namespace {

std::optional<std::string> page_misuse(const Arguments& arguments) {
  if (!arguments.output.empty()) return std::nullopt;
  return "a page goes to a file; expected -o and its name, such as -o plan.html";
}

/// A board's year takes a while to calculate. For a large order `coatday wood` shows it.
job::WoodFindings wood_of(const View& view) {
  constexpr std::size_t most_parts = 40;
  std::size_t parts = 0;
  for (const job::OrderPiece& piece : view.job().order.pieces) parts += piece.piece.parts.size();
  return parts <= most_parts ? planner::wood_findings(view.job(), *view.finished) : job::WoodFindings{};
}

/// When each finish may go on, whatever it goes on: not every part of a finish is coated when one is.
job::AirForecast air_of(const job::Job& job, const job::Plan& plan) {
  const int days = report::page::days_shown(plan);
  if (days == 0) return {};
  std::vector<job::Use> uses = job::in_use(job);
  for (job::Use& use : uses) use.wood = use.steel = {};
  return job::forecast(job, job.catalogue, uses, plan.from, days);
}

Outcome page_html(const View& view) {
  const report::Beside beside{view.advice(), wood_of(view), air_of(view.job(), view.plan())};
  return answer(view, report::plan_page(view.job(), view.plan(), beside, view.style.units));
}

std::string page_announcement(const View& view) { return view.is_planned() ? "the plan's page" : "the page says why there is no plan"; }

}  // namespace

Command page_command() {
  return {
      .name = "page",
      .group = groups::plan,
      .needs = Needs::plan,
      .advice = job::AdviceDepth::quick,
      .options = {with_help(orders(), "one order, or several that name the same shop file: one page, with a part for each order"), output(),
                  force(), from(), keep(), effort(), units()},
      .outputs = {{"html", "for a browser", page_html, std::string(report::page_mark)}},
      .about = {.brief = "a page of the plan for wall, phone and desk (HTML)",
                .summary = "Reads an order, plans it, and makes a page of the plan: one HTML file for the shop's wall, a phone and a desk. "
                           "On it: today and next, a timeline of every face beside the shop's air, the days, the pieces drawn by their "
                           "coats, what to buy with boxes to tick, hand-over, cautions. It needs no network; its script only remembers "
                           "ticks and shows the present moment.",
                .usage = {"ORDER.yaml... -o FILE.html"},
                .examples = {"order.yaml -o plan.html"}},
      .misuse = page_misuse,
      .announcement = page_announcement,
  };
}

}  // namespace coatday::cli
