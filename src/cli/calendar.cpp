#include "report/files/calendar.h"

#include <fmt/core.h>

#include "cli/commands.h"
#include "cli/options.h"
#include "cli/version.h"
#include "cli/view.h"
#include "report/files/tables.h"

namespace coatday::cli {
namespace {

Outcome calendar_ics(const View& view) {
  return answer(view, report::calendar_ics(view.plan(), view.order(), view.style.units, view.now, version()));
}
Outcome calendar_csv(const View& view) { return answer(view, report::calendar_csv(view.plan(), view.order(), view.style.units)); }

std::string calendar_announcement(const View& view) { return fmt::format("{} steps and the days of hand-over", view.plan().events.size()); }

}  // namespace

Command calendar_command() {
  return {
      .name = "calendar",
      .group = groups::plan,
      .needs = Needs::plan,
      .advice = job::AdviceDepth::when_late,
      .options = {orders(), with_help(output(), "the file to write, whole or not at all (default: standard output)"), force(), from(),
                  keep(), effort(), units()},
      .outputs = {{"ics", "for calendars", calendar_ics, std::string(report::calendar_mark)},
                  {"csv", "for spreadsheets", calendar_csv, report::calendar_csv_header()}},
      .about = {.brief = "the plan for the calendar of a phone or a computer",
                .summary = "Reads an order, plans it, and writes the plan for the calendar of a phone or a computer: a timed entry with an "
                           "alarm for every hands-on step, and the safe days from which a piece may be wrapped, delivered and "
                           "fully used.",
                .usage = {"ORDER.yaml... [-o FILE]"},
                .examples = {"order.yaml -o plan.ics"},
                .more = "Import the file of a plan made anew over the old one: entries keep their ids and move. A step that is no longer "
                        "in the plan stays in the calendar until you take it out. With csv each entry is a row, with day and hours in the "
                        "shop's time."},
      .announcement = calendar_announcement,
      .only_plans = true,
  };
}

}  // namespace coatday::cli
