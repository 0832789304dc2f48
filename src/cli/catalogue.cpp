#include "cli/commands.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "quantity/nearest.h"
#include "report/papers/report.h"

namespace coatday::cli {
namespace {

const About about_finishes{
    "Prints the finish products that orders may name, or all about one of them: its stages of drying, limits, coverage and the source of "
    "each "
    "value. With --at: how long its stages take in that air.",
    {"[NAME] [options]"},
    {"water-clear --at \"64\u00a0F\u00a055\u00a0%\""}};

const About about_schedules{
    "Prints the finishing schedules that orders may name, or the steps of one of them.", {"[NAME] [options]"}, {"--own label.yaml"}};

constexpr const char* at_help =
    "a temperature and a humidity, such as \"18\u00a0C\u00a065\u00a0%\": the time to each stage in that air, with its early and late side; "
    "refused where the finish may not go on or its laws do not reach. Without NAME: when each finish is dry to recoat";
constexpr const char* units_help = "us or metric (default metric)";

template <class T>
Outcome not_found(const char* what, const std::string& name, const std::map<std::string, T>& known) {
  std::vector<std::string> ids;
  for (const auto& [id, value] : known) ids.push_back(id);
  const auto meant = nearest_word(name, ids);
  return mistaken(std::string("no ") + what + " '" + name + "'" + (meant ? "; did you mean '" + *meant + "'?" : ""));
}

Outcome in_air(const finish::Product& product, const Arguments& arguments, const report::TextStyle& shown) {
  if (const auto reason = report::not_at(product, *arguments.at, shown.units)) return {no_plan, "", "coatday: " + *reason + "\n"};
  return {done,
          arguments.format == Format::json ? report::finish_at_json(product, *arguments.at)
                                           : report::finish_at_text(product, *arguments.at, shown),
          ""};
}

Outcome finishes(const Arguments& arguments, const World& world) {
  if (arguments.format == Format::json && (!arguments.at || arguments.name.empty())) {
    return mistaken("--format json needs the NAME of a finish and an air --at");
  }
  const auto catalogue = load_finishes(arguments, world);
  if (!catalogue) return catalogue.error();
  const report::TextStyle shown = text_style(arguments, world, Units::metric);
  if (arguments.name.empty()) {
    return {done, arguments.at ? report::finishes_at_text(*catalogue, *arguments.at, shown) : report::finishes_text(*catalogue, shown), ""};
  }
  const finish::Product* product = catalogue->product(arguments.name);
  if (product == nullptr) return not_found("finish", arguments.name, catalogue->products);
  return arguments.at ? in_air(*product, arguments, shown) : Outcome{done, report::finish_text(*product, shown), ""};
}

Outcome schedules(const Arguments& arguments, const World& world) {
  const auto catalogue = load_finishes(arguments, world);
  if (!catalogue) return catalogue.error();
  const report::TextStyle shown = text_style(arguments, world, Units::metric);
  if (arguments.name.empty()) return {done, report::schedules_text(*catalogue, shown), ""};
  const finish::Schedule* schedule = catalogue->schedule(arguments.name);
  if (schedule == nullptr) return not_found("schedule", arguments.name, catalogue->schedules);
  return {done, report::schedule_text(*schedule, *catalogue, shown), ""};
}

}  // namespace

Command finishes_command() {
  return {"finishes",
          {told(name(), "the id of a finish (default: lists them all)"), told(at(), at_help),
           told(format(), "text or json, of NAME with --at (default text)"), own(), told(units(), units_help), colour()},
          about_finishes,
          finishes};
}

Command schedules_command() {
  return {"schedules",
          {told(name(), "the id of a schedule (default: lists them all)"),
           told(own(), "a file with schedules of your own; may be repeated"), told(units(), units_help), colour()},
          about_schedules,
          schedules};
}

}  // namespace coatday::cli
