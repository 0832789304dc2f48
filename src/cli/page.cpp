#include "report/papers/page.h"

#include <fmt/core.h>

#include "cli/commands.h"
#include "cli/options.h"
#include "cli/output_file.h"
#include "cli/planned.h"
#include "report/document/render_html.h"
#include "report/figures/time_scale.h"

namespace coatday::cli {
namespace {

const About about{
    "Reads an order, plans it, and makes a page of the plan: one HTML file for the shop's wall, a phone and a desk. "
    "On it: today and next, a timeline of every face beside the shop's air, the days, the pieces drawn by their "
    "coats, what to buy with boxes to tick, hand-over, cautions. It needs no network; its script only remembers "
    "ticks and shows the present moment.",
    {"ORDER.yaml... -o FILE.html [options]"},
    {"order.yaml -o plan.html"}};

std::string told(const Arguments& arguments, const job::Plan& plan) {
  const char* what = plan.status == job::Status::feasible ? "the plan's page" : "the page says why there is no plan";
  return fmt::format("{}: {}\n", arguments.output, what);
}

// A board's year takes a blink of its own: of a large order coatday wood tells it.
job::WoodFindings wood_of(const job::Job& job, const planner::FinishedPlan& finished) {
  constexpr std::size_t most_parts = 40;
  std::size_t parts = 0;
  for (const job::OrderPiece& piece : job.order.pieces) parts += piece.piece.parts.size();
  return parts <= most_parts ? planner::wood_findings(job, finished) : job::WoodFindings{};
}

// When each finish may go on, whatever it goes on: not every part of a finish is coated when one is.
job::AirForecast air_of(const job::Job& job, const job::Plan& plan) {
  const int days = report::page::days_shown(plan);
  if (days == 0) return {};
  std::vector<job::Use> uses = job::in_use(job);
  for (job::Use& use : uses) use.wood = use.steel = {};
  return job::forecast(job, job.catalogue, uses, plan.from, days);
}

Outcome run(const Arguments& arguments, const World& world) {
  if (arguments.output.empty()) return mistaken("a page goes to a file; expected -o and its name, such as -o plan.html");
  if (const auto refused = refused_output(arguments, report::page_mark)) return *refused;
  const auto made = planned(arguments, world, job::AdviceDepth::quick);
  if (!made) return made.error();
  const report::TextStyle shown = text_style(arguments, world, made->job.shop.units);
  const report::Beside beside{made->finished.advice(), wood_of(made->job, made->finished), air_of(made->job, made->plan())};
  return to_output(arguments, status_of(made->plan(), false), report::plan_page(made->job, made->plan(), beside, shown.units),
                   report::page_mark, told(arguments, made->plan()));
}

}  // namespace

Command page_command() {
  return {"page",
          {told(orders(), "one order, or several that name the same shop file: one page, with a part for each order"), output(), force(),
           from(), keep(), effort(), units()},
          about,
          run};
}

}  // namespace coatday::cli
