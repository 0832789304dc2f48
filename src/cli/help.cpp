#include "cli/help.h"

#include "cli/commands.h"
#include "report/document/lines.h"

namespace coatday::cli {
namespace {

using report::Lines;
using report::Text;

constexpr report::TextStyle page;

void paragraph(Lines& lines, std::string_view text) {
  report::append(lines, report::wrap(text, page.columns));
  lines.emplace_back();
}

/// Below each other, the first after a word.
void list(Lines& lines, std::string_view word, const std::vector<std::string>& all) {
  Text head = word;
  for (const std::string& one : all) {
    report::append(lines, report::hang(head, one, page));
    head = report::spaces(head.width());
  }
}

void entry(Lines& lines, const Entry& one, int label_width) {
  report::append(lines, report::hang(Text("  ") + report::padded(one.label, label_width), one.text, page));
}

constexpr int option_width = 18;
constexpr int command_width = 12;

void list_commands(Lines& lines) {
  std::string_view group;
  for (const Command& command : commands()) {
    if (command.group != group) {
      if (!group.empty()) lines.emplace_back();
      lines.emplace_back(command.group);
    }
    group = command.group;
    entry(lines, {std::string(command.name), std::string(command.about.brief)}, command_width);
  }
  lines.emplace_back();
}

}  // namespace

std::vector<std::string> usage(const Command& command) {
  std::vector<std::string> all;
  for (const std::string_view words : command.about.usage) {
    all.push_back("coatday " + std::string(command.name) + " " + std::string(words) + " [options]");
  }
  return all;
}

std::vector<std::string> examples(const Command& command) {
  std::vector<std::string> all;
  for (const std::string_view words : command.about.examples)
    all.push_back("coatday " + std::string(command.name) + " " + std::string(words));
  return all;
}

std::string help(const Command& command) {
  Lines lines;
  paragraph(lines, command.about.summary);
  list(lines, "Usage: ", usage(command));
  lines.emplace_back();
  for (const Option& option : command.options)
    for (const Entry& one : option.help) entry(lines, one, option_width);
  entry(lines, {"-h, --help", "this text"}, option_width);
  lines.emplace_back();
  if (!command.about.more.empty()) paragraph(lines, command.about.more);
  list(lines, "Example: ", examples(command));
  return report::render(lines, page.colour);
}

std::string help() {
  Lines lines;
  paragraph(lines, about_coatday);
  paragraph(lines, "Usage: coatday COMMAND ...");
  list_commands(lines);
  entry(lines, {"-h, --help", "this text; after a command, all about that command"}, command_width);
  entry(lines, {"--version", "the version of the program"}, command_width);
  lines.emplace_back();
  paragraph(lines, exit_statuses);
  list(lines, "Example: ", {"coatday plan order.yaml"});
  return report::render(lines, page.colour);
}

std::string_view version() { return COATDAY_VERSION; }

}  // namespace coatday::cli
