#include <algorithm>

#include "cli/commands.h"
#include "cli/completion.h"
#include "cli/help_text.h"
#include "cli/manual.h"
#include "cli/options.h"
#include "cli/topics.h"
#include "cli/view.h"

namespace coatday::cli {
namespace {

std::optional<std::string> help_misuse(const Arguments& arguments) {
  const int asked = int{!arguments.name.empty()} + int{arguments.manual} + int{!arguments.completion.empty()};
  if (asked <= 1) return std::nullopt;
  return "help shows one thing at a time: a TOPIC, --man or --completion";
}

Outcome help_on(const std::string& name) {
  Args known;
  for (const Topic& topic : topics()) {
    if (topic.name == name) return {done, help(topic), ""};
    known.emplace_back(topic.name);
  }
  for (const Command& command : commands()) {
    if (command.name == name) return {done, help(command), ""};
    known.emplace_back(command.name);
  }
  return mistaken("no help on '" + name + "'" + suggestion(name, known) + " (coatday help lists the topics)");
}

Outcome help_text(const View& view) {
  const Arguments& arguments = view.arguments;
  if (arguments.manual) return {done, manual(), ""};
  if (!arguments.completion.empty()) return {done, bash_completion(), ""};
  return arguments.name.empty() ? Outcome{done, help(), ""} : help_on(arguments.name);
}

}  // namespace

Command help_command() {
  return {
      .name = "help",
      .group = groups::help,
      .options = {topic(), man(), completion()},
      .outputs = {{"text", "for people", help_text}},
      .about = {.brief = "how to use coatday, and what its words mean",
                .summary = "Prints a topic of the help, the help of a command, or what an installation needs.",
                .usage = {"[TOPIC]"},
                .examples = {"dates", "--man | man -l -"}},
      .misuse = help_misuse,
  };
}

}  // namespace coatday::cli
