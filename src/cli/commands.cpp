#include "cli/commands.h"

namespace coatday::cli {

const std::vector<Command>& commands() {
  static const std::vector<Command> all{plan_command(),  page_command(),     buy_command(),      quote_command(),     card_command(),
                                        sheet_command(), calendar_command(), why_command(),      what_if_command(),   air_command(),
                                        check_command(), area_command(),     finishes_command(), schedules_command(), wood_command()};
  return all;
}

}  // namespace coatday::cli
