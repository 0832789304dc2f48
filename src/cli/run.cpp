#include "cli/run.h"

#include <exception>

#include "cli/commands.h"
#include "report/document/lines.h"

namespace coatday::cli {

Outcome run(const std::vector<std::string>& words, const Environment& environment) {
  Outcome outcome;
  try {
    const auto arguments = read_arguments(words);
    outcome = arguments ? arguments->command->run(*arguments, environment) : arguments.error();
  } catch (const std::exception& fault) {
    outcome = {our_fault, "", std::string("coatday: this is a bug in coatday; please report it with the order: ") + fault.what() + "\n"};
  }
  outcome.err = report::harmless_text(outcome.err);  // mistakes repeat what the user typed
  return outcome;
}

}  // namespace coatday::cli
