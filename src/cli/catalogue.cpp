#include "cli/commands.h"
#include "cli/planned.h"
#include "quantity/nearest.h"
#include "report/report.h"

namespace coatday::cli {
namespace {

template <class T>
Outcome not_found(const char* what, const std::string& name, const std::map<std::string, T>& known) {
  std::vector<std::string> ids;
  for (const auto& [id, value] : known) ids.push_back(id);
  const auto meant = nearest_word(name, ids);
  return mistaken(std::string("no ") + what + " '" + name + "'" + (meant ? "; did you mean '" + *meant + "'?" : ""));
}

}  // namespace

Outcome finishes_command(const Arguments& arguments, const World& world) {
  const auto catalogue = load_finishes(arguments, world);
  if (!catalogue) return catalogue.error();
  const report::Look shown = look(arguments, world, Units::metric);
  if (arguments.name.empty()) return {done, report::finishes_text(*catalogue, shown), ""};
  const finish::Product* product = catalogue->product(arguments.name);
  if (product == nullptr) return not_found("finish", arguments.name, catalogue->products);
  return {done, report::finish_text(*product, shown), ""};
}

Outcome schedules_command(const Arguments& arguments, const World& world) {
  const auto catalogue = load_finishes(arguments, world);
  if (!catalogue) return catalogue.error();
  const report::Look shown = look(arguments, world, Units::metric);
  if (arguments.name.empty()) return {done, report::schedules_text(*catalogue, shown), ""};
  const finish::Schedule* schedule = catalogue->schedule(arguments.name);
  if (schedule == nullptr) return not_found("schedule", arguments.name, catalogue->schedules);
  return {done, report::schedule_text(*schedule, *catalogue, shown), ""};
}

}  // namespace coatday::cli
