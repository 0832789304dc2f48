#include "report/papers/finishes.h"
#include "cli/commands.h"
#include "cli/options.h"
#include "cli/view.h"
#include "report/papers/finish_at.h"

namespace coatday::cli {
namespace {

constexpr const char* at_help =
    "a temperature and a humidity, such as \"18\u00a0C\u00a065\u00a0%\": the time to each stage in that air, earliest, expected and safe; "
    "refused where the finish may not go on or its laws do not reach. Without NAME: when each finish is dry to recoat";

std::optional<std::string> finishes_misuse(const Arguments& arguments) {
  if (arguments.format != "json" || (arguments.at && !arguments.name.empty())) return std::nullopt;
  return "--format json needs the NAME of a finish and an air --at";
}

Outcome no_such_finish(const View& view) {
  const std::string& name = view.arguments.name;
  return mistaken("no finish '" + name + "'" + suggestion(name, names_in(view.job().catalogue.products)));
}

/// Why the finish has no times in the air that is asked about.
std::optional<Outcome> not_at(const finish::Product& product, const View& view) {
  const auto reason = report::why_not_at(product, *view.arguments.at, view.style.units);
  return reason ? std::optional(Outcome{no_plan, "", "coatday: " + *reason + "\n"}) : std::nullopt;
}

Outcome all_finishes(const View& view) {
  const finish::Catalogue& all = view.job().catalogue;
  const auto& at = view.arguments.at;
  return answer(view, at ? report::finishes_at_text(all, *at, view.style) : report::finishes_text(all, view.style));
}

Outcome finishes_text(const View& view) {
  const Arguments& arguments = view.arguments;
  if (arguments.name.empty()) return all_finishes(view);
  const finish::Product* product = view.job().catalogue.product(arguments.name);
  if (product == nullptr) return no_such_finish(view);
  if (!arguments.at) return answer(view, report::finish_text(*product, view.style));
  const auto refused = not_at(*product, view);
  return refused ? *refused : answer(view, report::finish_at_text(*product, *arguments.at, view.style));
}

Outcome finishes_json(const View& view) {
  const finish::Product* product = view.job().catalogue.product(view.arguments.name);
  if (product == nullptr) return no_such_finish(view);
  const auto refused = not_at(*product, view);
  return refused ? *refused : answer(view, report::finish_at_json(*product, *view.arguments.at));
}

}  // namespace

Command finishes_command() {
  return {
      .name = "finishes",
      .group = groups::before_planning,
      .needs = Needs::catalogue,
      .options = {with_help(name(), "the id of a finish (default: lists them all)"), with_help(at(), at_help), own(), metric_units(),
                  colour()},
      .outputs = {{"text", "for people", finishes_text}, {"json", "for programs, of NAME with --at", finishes_json}},
      .about = {.brief = "the finish products, or all about one of them",
                .summary = "Prints the finish products that orders may name, or all about one of them: its stages of drying, limits, "
                           "coverage and the source of each value. With --at: how long its stages take in that air.",
                .usage = {"[NAME]"},
                .examples = {"water-clear --at \"64\u00a0F\u00a055\u00a0%\""}},
      .misuse = finishes_misuse,
  };
}

}  // namespace coatday::cli
