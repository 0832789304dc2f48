#include "cli/help.h"

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
void list(Lines& lines, std::string_view word, const std::string& command, const std::vector<std::string_view>& all) {
  Text head = word;
  for (const std::string_view one : all) {
    report::append(lines, report::hang(head, command + std::string(one), page));
    head = report::spaces(head.width());
  }
}

void entry(Lines& lines, const Entry& one) {
  constexpr int label_width = 18;
  report::append(lines, report::hang(Text("  ") + report::padded(one.label, label_width), one.text, page));
}

}  // namespace

std::string help(const Command& command) {
  const std::string called = "coatday " + std::string(command.name) + " ";
  Lines lines;
  paragraph(lines, command.about.summary);
  list(lines, "Usage: ", called, command.about.usage);
  lines.emplace_back();
  for (const Option& option : command.options)
    for (const Entry& one : option.help) entry(lines, one);
  entry(lines, {"-h, --help", "this text"});
  lines.emplace_back();
  if (!command.about.more.empty()) paragraph(lines, command.about.more);
  list(lines, "Example: ", called, command.about.examples);
  return report::render(lines, page.colour);
}

std::string_view help() {
  return R"(coatday plans the finishing of furniture made to order: which coat goes on which
face and when, what to buy, and when a piece may be handled, delivered and used.

Usage: coatday COMMAND ...

  plan ORDER.yaml...       the whole plan, day by day, of one order or several
  page ORDER.yaml -o FILE  a page of the plan for wall, phone and desk (HTML)
  buy ORDER.yaml           what has to be bought for it
  quote ORDER.yaml         hours, materials and an honest date, for a price
  sheet ORDER.yaml         sheets to work from and write on, a page a day
  calendar ORDER.yaml      the plan for the calendar of a phone or a computer
  card ORDER.yaml          the customer's card: from when it may be used how
  why ORDER.yaml [EVENT]   why a step of the plan starts when it does
  what-if ORDER.yaml       what a change would do, or which change helps most
  air SHOP.yaml            the shop's air, day by day, and what may go on in it
  check ORDER.yaml         judges the order without planning it
  area ORDER.yaml          the area of every face that is coated
  finishes [NAME]          the finish products, or all about one of them
  schedules [NAME]         the finishing schedules, or the steps of one of them
  wood ORDER.yaml          whether its wood is ready, how it cups and moves
  wood --at AIR            the moisture of wood in an air, and how a board moves

  -h, --help               this text; after a command, all about that command
  --version                the version of the program

Exit status: 0 all is well; 1 no plan is possible or a face would be left
behind; 2 a mistake in a file or on the command line; 3 a fault in coatday.

Example: coatday plan order.yaml
)";
}

std::string_view version() { return COATDAY_VERSION; }

}  // namespace coatday::cli
