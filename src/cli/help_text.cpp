#include "cli/help_text.h"

#include <algorithm>
#include <span>

#include "cli/commands.h"
#include "report/document/lines.h"

namespace coatday::cli {
namespace {

using report::Lines;
using report::Text;

constexpr report::TextStyle terminal;

void paragraph(Lines& lines, std::string_view text) {
  report::append(lines, report::wrap(text, terminal.columns));
  lines.emplace_back();
}

/// Below each other, the first after a word.
void list(Lines& lines, std::string_view word, const std::vector<std::string>& all) {
  Text head = word;
  for (const std::string& one : all) {
    report::append(lines, report::hang(head, one, terminal));
    head = report::spaces(head.width());
  }
}

void entry(Lines& lines, const Entry& one, int label_width) {
  report::append(lines, report::hang(Text("  ") + report::padded(one.label, label_width), one.text, terminal));
}

constexpr int option_width = 18;
constexpr int name_width = 12;
constexpr int status_width = 3;

void list_commands(Lines& lines) {
  std::string_view group;
  for (const Command& command : commands()) {
    if (command.group != group) {
      if (!group.empty()) lines.emplace_back();
      lines.emplace_back(command.group);
    }
    group = command.group;
    entry(lines, {std::string(command.name), std::string(command.about.brief)}, name_width);
  }
  lines.emplace_back();
}

void list_topics(Lines& lines) {
  lines.emplace_back("Topics, as in coatday help dates");
  for (const Topic& topic : topics()) entry(lines, {std::string(topic.name), std::string(title(topic))}, name_width);
  lines.emplace_back();
}

using Blocks = std::span<const Entry>;

/// The width of the labels of these entries, two spaces included. A label that is longer than most has a line of its own.
int label_width(Blocks entries) {
  constexpr int most = 20;
  int width = 0;
  for (const Entry& entry : entries) width = entry.text.empty() ? width : std::max(width, std::min(Text(entry.label).width() + 2, most));
  return width;
}

void topic_entry(Lines& lines, const Entry& one, int width) {
  if (Text(one.label).width() + 2 <= width) return entry(lines, one, width);
  report::append(lines, report::hang("  ", one.label, terminal));
  if (!one.text.empty()) entry(lines, {"", one.text}, width);
}

/// A paragraph, or entries that follow each other, off the front of the blocks.
Blocks take_group(Blocks& blocks) {
  const auto next = std::find_if(blocks.begin() + 1, blocks.end(), [](const Entry& block) { return block.label.empty(); });
  const std::size_t count = blocks.front().label.empty() ? 1 : static_cast<std::size_t>(next - blocks.begin());
  const Blocks group = blocks.first(count);
  blocks = blocks.subspan(count);
  return group;
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
  for (const std::string_view words : command.about.examples) {
    all.push_back("coatday " + std::string(command.name) + " " + std::string(words));
  }
  return all;
}

std::vector<Entry> exit_statuses() {
  return {{"0", "All is well."},
          {"1", "No plan is possible, or a face would stay bare. With --strict: there is a warning."},
          {"2", "There is a mistake in a file or on the command line."},
          {"3", "The checker found our own plan wrong. This is a bug. Please report it."}};
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
  return report::render(lines, terminal.colour);
}

std::string help(const Topic& topic) {
  Lines lines{Text(topic.name) + Text(": ") + Text(title(topic))};
  const std::vector<Entry> all = blocks(topic);
  for (Blocks rest = all; !rest.empty();) {
    const Blocks group = take_group(rest);
    lines.emplace_back();
    if (group.front().label.empty()) report::append(lines, report::wrap(group.front().text, terminal.columns));
    if (group.front().label.empty()) continue;
    for (const Entry& one : group) topic_entry(lines, one, label_width(group));
  }
  const auto same = [&topic](const Command& command) { return command.name == topic.name; };
  if (std::any_of(commands().begin(), commands().end(), same)) {
    lines.emplace_back();
    lines.emplace_back("The command of this name: coatday " + std::string(topic.name) + " --help");
  }
  return report::render(lines, terminal.colour);
}

std::string help() {
  Lines lines;
  paragraph(lines, about_coatday);
  paragraph(lines, "Usage: coatday COMMAND ...");
  list_commands(lines);
  list_topics(lines);
  entry(lines, {"-h, --help", "this text; after a command, all about that command"}, name_width);
  entry(lines, {"--version", "the version of the program"}, name_width);
  lines.emplace_back();
  lines.emplace_back("Exit status");
  for (const Entry& status : exit_statuses()) entry(lines, status, status_width);
  lines.emplace_back();
  list(lines, "Example: ", {"coatday plan order.yaml"});
  return report::render(lines, terminal.colour);
}

}  // namespace coatday::cli
