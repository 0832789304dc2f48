#include "cli/run.h"

#include <exception>

#include "cli/commands.h"
#include "report/lines.h"

namespace coatday::cli {
namespace {

Outcome obey(const Arguments& arguments, const World& world) {
  switch (arguments.command) {
    case Command::plan:
      return plan_command(arguments, world);
    case Command::buy:
      return buy_command(arguments, world);
    case Command::why:
      return why_command(arguments, world);
    case Command::check:
      return check_command(arguments, world);
    case Command::area:
      return area_command(arguments, world);
    case Command::finishes:
      return finishes_command(arguments, world);
    case Command::schedules:
      return schedules_command(arguments, world);
  }
  return {};
}

}  // namespace

Outcome run(const std::vector<std::string>& words, const World& world) {
  Outcome outcome;
  try {
    const auto arguments = read_arguments(words);
    outcome = arguments ? obey(*arguments, world) : arguments.error();
  } catch (const std::exception& fault) {
    outcome = {our_fault, "", std::string("coatday: this is a bug in coatday; please report it with the order: ") + fault.what() + "\n"};
  }
  outcome.err = report::harmless_text(outcome.err);  // mistakes repeat what the user typed
  return outcome;
}

}  // namespace coatday::cli
