#include "cli/manual.h"

#include <fmt/core.h>

#include "cli/commands.h"
#include "cli/help_text.h"
#include "cli/roff.h"
#include "cli/topics.h"
#include "cli/version.h"

namespace coatday::cli {
namespace {

const std::vector<Entry> variables{
    {"COATDAY_SCHEDULES", "The folder of the shipped finishes and schedules. Without it, coatday looks beside the program."},
    {"NO_COLOR", "If it is set and not empty, the terminal shows no colours unless --colour asks for them."},
    {"SOURCE_DATE_EPOCH", "Seconds since 1970 in place of the clock, so that the same words give the same bytes."}};

std::string entries(const std::vector<Entry>& all) {
  std::string page;
  for (const Entry& entry : all) page += roff::item(entry.label, entry.text);
  return page;
}

std::string examples_of(const Command& command) {
  std::string page;
  for (const std::string& line : examples(command)) page += roff::example(line);
  return page;
}

std::string command_part(const Command& command) {
  std::string page = roff::subsection(command.name) + roff::paragraph(command.about.summary);
  for (const std::string& line : usage(command)) page += roff::example(line);
  for (const Option& option : command.options) page += entries(option.help);
  if (!command.about.more.empty()) page += roff::paragraph(command.about.more);
  return page + roff::paragraph("Example:") + examples_of(command);
}

std::string topic_part(const Topic& topic) {
  std::string page = roff::subsection(std::string(topic.name) + ": " + std::string(title(topic)));
  for (const Entry& block : blocks(topic)) {
    if (block.label.empty()) page += roff::paragraph(block.text);
    if (!block.label.empty()) page += block.text.empty() ? roff::example(block.label) : roff::item(block.label, block.text);
  }
  return page;
}

}  // namespace

std::string manual() {
  std::string page = fmt::format(".TH COATDAY 1 \"\" \"coatday {}\" \"User Commands\"\n", version());
  page += roff::section("NAME") + "coatday \\- plan the finishing of furniture made to order\n";
  page += roff::section("SYNOPSIS") + "\\fBcoatday\\fR \\fICOMMAND\\fR ...\n";
  page += roff::section("DESCRIPTION") + roff::paragraph(about_coatday);
  for (const Command& command : commands()) page += roff::item(command.name, command.about.brief);
  page += roff::section("COMMANDS");
  for (const Command& command : commands()) page += command_part(command);
  page += roff::section("TOPICS");
  for (const Topic& topic : topics()) page += topic_part(topic);
  page += roff::section("EXIT STATUS") + entries(exit_statuses());
  page += roff::section("ENVIRONMENT") + entries(variables);
  return page;
}

}  // namespace coatday::cli
