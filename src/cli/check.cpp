#include "cli/commands.h"
#include "cli/options.h"
#include "cli/view.h"
#include "report/papers/report.h"

namespace coatday::cli {
namespace {

Outcome check_text(const View& view) {
  const std::vector<job::Finding> found = planner::validate(view.job());
  return {status_of(found, view.arguments.strict), report::findings_text(found, view.order(), view.style), ""};
}

}  // namespace

Command check_command() {
  return {
      .name = "check",
      .group = groups::before_planning,
      .needs = Needs::job,
      .options = {orders(), strict(), colour()},
      .outputs = {{"text", "for people", check_text}},
      .about = {.brief = "judges the order without planning it",
                .summary = "Reads an order and prints what is wrong with it before any planning: faces that would be left behind, products "
                           "that do not go over each other, missing places.",
                .usage = {"ORDER.yaml..."},
                .examples = {"order.yaml --strict"}},
  };
}

}  // namespace coatday::cli
