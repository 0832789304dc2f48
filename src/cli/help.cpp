#include <algorithm>

#include "cli/commands.h"
#include "cli/help_text.h"
#include "cli/options.h"
#include "cli/topics.h"
#include "cli/view.h"

namespace coatday::cli {
namespace {

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
  return arguments.name.empty() ? Outcome{done, help(), ""} : help_on(arguments.name);
}

}  // namespace

Command help_command() {
  Option topic = with_help(name(), "a topic, or a command (default: lists them all)");
  topic.name = topic.help.front().label = "TOPIC";
  return {
      .name = "help",
      .group = groups::help,
      .options = {topic},
      .outputs = {{"text", "for people", help_text}},
      .about = {.brief = "how to use coatday, and what its words mean",
                .summary = "Prints a topic of the help, or the help of a command.",
                .usage = {"[TOPIC]"},
                .examples = {"dates"}},
  };
}

}  // namespace coatday::cli
