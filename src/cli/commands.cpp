#include "cli/commands.h"

#include <algorithm>

#include "cli/options.h"

namespace coatday::cli {
namespace {

/// With --format after what the command is about, where it writes in more than one format.
Command with_format(Command command) {
  const auto at = std::find_if(command.options.begin(), command.options.end(), [](const Option& o) { return o.name.starts_with('-'); });
  if (command.outputs.size() > 1) command.options.insert(at, format(command.outputs));
  return command;
}

}  // namespace

const std::vector<Command>& commands() {
  static const std::vector<Command> all = [] {
    std::vector<Command> rows{
        plan_command(),  page_command(),    sheet_command(), calendar_command(), buy_command(),  // the plan
        quote_command(), card_command(),                                                         // the customer
        why_command(),   what_if_command(),                                                      // questions
        check_command(), area_command(),    air_command(),   wood_command(),     finishes_command(), schedules_command(), help_command(),
    };
    for (Command& row : rows) row = with_format(std::move(row));
    return rows;
  }();
  return all;
}

}  // namespace coatday::cli
