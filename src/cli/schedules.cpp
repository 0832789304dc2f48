#include "report/papers/schedules.h"
#include "cli/commands.h"
#include "cli/options.h"
#include "cli/view.h"

namespace coatday::cli {
namespace {

Outcome schedules_text(const View& view) {
  const finish::Catalogue& catalogue = view.job().catalogue;
  const std::string& name = view.arguments.name;
  if (name.empty()) return answer(view, report::schedules_text(catalogue, view.style));
  const finish::Schedule* schedule = catalogue.schedule(name);
  if (schedule == nullptr) return mistaken("no schedule '" + name + "'" + suggestion(name, names_in(catalogue.schedules)));
  return answer(view, report::schedule_text(*schedule, catalogue, view.style));
}

}  // namespace

Command schedules_command() {
  return {
      .name = "schedules",
      .group = groups::before_planning,
      .needs = Needs::catalogue,
      .options = {with_help(name(), "the id of a schedule (default: lists them all)"),
                  with_help(own(), "a file with schedules of your own; may be repeated"), metric_units(), colour()},
      .outputs = {{"text", "for people", schedules_text}},
      .about = {.brief = "the finishing schedules, or the steps of one of them",
                .summary = "Prints the finishing schedules that orders may name, or the steps of one of them.",
                .usage = {"[NAME]"},
                .examples = {"--own label.yaml"}},
  };
}

}  // namespace coatday::cli
