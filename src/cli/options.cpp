#include "cli/options.h"

#include <utility>

#include "cli/topics.h"
#include "input/amounts.h"
#include "input/wood.h"
#include "quantity/nearest.h"

namespace coatday::cli {
namespace {

using Takes = Option::Takes;
using Read = tl::expected<void, std::string>;

tl::unexpected<std::string> wrong(std::string message) { return tl::make_unexpected(std::move(message)); }

template <class T>
using Choices = std::vector<std::pair<std::string, T>>;

std::string listed(const Args& words) {
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i) text += (i == 0 ? "" : i + 1 == words.size() ? " or " : ", ") + words[i];
  return text;
}

/// An option is named by the first word of its entry: "--from TIME".
Option option(const Entry& help, Takes takes, decltype(Option::read) read) {
  return {help.label.substr(0, help.label.find(' ')), takes, std::move(read), {help}};
}

/// One word of several, for a member of the arguments.
template <class T, class Member>
Option choice(const Entry& help, Member member, const Choices<T>& known) {
  Args words;
  for (const auto& [word, value] : known) words.push_back(word);
  const std::string name = help.label.substr(0, help.label.find(' '));
  Option made = option(help, Takes::word, [=](const Args& typed, Arguments& arguments) -> Read {
    for (const auto& [word, value] : known) {
      if (word != typed.front()) continue;
      arguments.*member = value;
      return {};
    }
    return wrong(name + " '" + typed.front() + "': expected " + listed(words) + suggestion(typed.front(), words));
  });
  made.choices = std::move(words);
  return made;
}

/// The words as they are.
Option kept(const Entry& help, std::string Arguments::*member) {
  return option(help, Takes::word, [member](const Args& typed, Arguments& arguments) -> Read {
    arguments.*member = typed.front();
    return {};
  });
}
Option kept(const Entry& help, Args Arguments::*member) {
  return option(help, Takes::words, [member](const Args& typed, Arguments& arguments) -> Read {
    arguments.*member = typed;
    return {};
  });
}

/// Said or not.
Option flag(const Entry& help, bool Arguments::*member) {
  return option(help, Takes::nothing, [member](const Args&, Arguments& arguments) -> Read {
    arguments.*member = true;
    return {};
  });
}

constexpr double thorough = 30;  // seconds
constexpr double most_effort = 86'400;

Read read_effort(const Args& words, Arguments& arguments) {
  const std::string& typed = words.front();
  const auto seconds = parse_count(typed);
  const bool known = typed == "quick" || typed == "thorough" || (seconds && *seconds <= most_effort);
  if (!known) {
    return wrong("--effort '" + typed + "': expected quick, thorough or whole seconds, a day at most" +
                 suggestion(typed, {"quick", "thorough"}));
  }
  arguments.effort = typed == "quick" ? 0 : typed == "thorough" ? thorough : *seconds;
  return {};
}

Read read_from(const Args& typed, Arguments& arguments) {
  const auto from = parse_local_time(typed.front());
  if (!from) return wrong("--from " + from.error());
  arguments.from = *from;
  return {};
}

Read read_at(const Args& typed, Arguments& arguments) {
  const auto air = input::parse_air(typed.front());
  if (!air) return wrong("--at " + air.error());
  arguments.at = *air;
  return {};
}

/// A property of a board, as `parse` reads it.
template <class Parse, class Member>
Option of_board(const Entry& help, Parse parse, Member member) {
  const std::string name = help.label.substr(0, help.label.find(' '));
  return option(help, Takes::word, [=](const Args& typed, Arguments& arguments) -> Read {
    const auto value = parse(typed.front());
    if (!value) return wrong(name + " " + value.error());
    arguments.board.*member = *value;
    return {};
  });
}

bool is_yaml(const std::string& word) { return word.ends_with(".yaml") || word.ends_with(".yml"); }

// After the first word, which is an order whatever its name: more orders, then perhaps a step.
Read read_event(const Args& typed, Arguments& arguments) {
  Args words = typed;
  if (words.size() > 1 && !is_yaml(words.back())) {
    arguments.name = words.back();
    words.pop_back();
  }
  for (std::size_t i = 1; i < words.size(); ++i) {
    if (!is_yaml(words[i])) return wrong("'" + words[i] + "': a second order's name ends in .yaml, and a single step comes last");
  }
  arguments.orders = words;
  return {};
}

Read read_shop(const Args& typed, Arguments& arguments) {
  arguments.shop = typed.front();
  arguments.orders.assign(typed.begin() + 1, typed.end());
  return {};
}

constexpr int most_days = 366;

Read read_days(const Args& typed, Arguments& arguments) {
  const auto days = parse_count(typed.front());
  if (!days || *days < 1 || *days > most_days) return wrong("--days '" + typed.front() + "': expected a count from 1 to 366");
  arguments.days = *days;
  return {};
}

Option needed(Option option) {
  option.needed = true;
  return option;
}

}  // namespace

std::string suggestion(const std::string& typed, const Args& known) {
  const auto meant = nearest_word(typed, known);
  return meant ? "; did you mean '" + *meant + "'?" : "";
}

Option with_help(Option option, std::string help) {
  option.help.front().text = std::move(help);
  return option;
}

Option orders() {
  Option option = kept({"ORDER.yaml...", "one order, or several that name the same shop file"}, &Arguments::orders);
  option.name = "ORDER.yaml";
  return needed(option);
}
Option orders_and_event() {
  Option option = with_help(orders(), "one order, or several that name the same shop file; the names of the others end in .yaml");
  option.read = read_event;
  option.help.push_back({"EVENT", "the id of a step (default: prints the ids of all steps)"});
  return option;
}
Option shop_and_orders() {
  Option option{"SHOP.yaml", Takes::words, read_shop, {{"SHOP.yaml", "the shop's file"}}};
  option.help.push_back(
      {"ORDER.yaml",
       "orders: their finishes are shown, judged at the can and at the parts as well, which lag behind the air (default: the "
       "finishes on the shop's shelf and its own, at the can alone)"});
  return needed(option);
}
Option name() { return kept({"NAME", ""}, &Arguments::name); }

Option format(const std::vector<Output>& outputs) {
  Choices<std::string> formats;
  Args shown;
  for (const Output& output : outputs) {
    formats.emplace_back(output.format, output.format);
    shown.push_back(std::string(output.format) + " " + std::string(output.purpose));
  }
  return choice({"--format FORMAT", listed(shown) + " (default " + formats.front().first + ")"}, &Arguments::format, formats);
}
Option days() { return option({"--days N", "so many days, 1 to 366 (default 7)"}, Takes::word, read_days); }
Option finish() { return kept({"--finish NAME", "a finish to show in place of those; may be repeated"}, &Arguments::finishes); }
Option fit() {
  return kept({"--fit LOG.csv",
               "finds the room's time constant and moisture gain from a logger's readings of a night or more, in place of all else"},
              &Arguments::fit);
}
Option from() {
  return option(
      {"--from TIME",
       "nothing starts before it, as in \"2027-01-11\u00a008:00\", in the shop's time zone (default: the order's start, else now, "
       "rounded up to 5\u00a0min)"},
      Takes::word, read_from);
}
Option at() { return option({"--at AIR", "a temperature and a humidity, such as \"70\u00a0F\u00a065\u00a0%\""}, Takes::word, read_at); }
Option species() {
  return of_board({"--species NAME", "of the board: red-oak, hard-maple, walnut"}, input::parse_species, &BoardAsked::species);
}
Option width() {
  return of_board({"--width LENGTH", "of the board across its grain, in the air it comes from: \"22\u00a0in\", \"560\u00a0mm\""},
                  parse_length, &BoardAsked::width);
}
Option cut() {
  return of_board({"--cut CUT", "flat, quarter, or the angle between the growth rings and the face: \"35\u00a0deg\""},
                  input::parse_ring_angle, &BoardAsked::cut);
}
Option from_air_or_time() {
  return option({"--from AIR",
                 "the air it comes from, such as \"70\u00a0F\u00a035\u00a0%\"; these four belong together. With an order a time, as in "
                 "\"2027-01-11\u00a008:00\": nothing starts before it"},
                Takes::word, [](const Args& typed, Arguments& arguments) -> Read {
                  if (parse_local_time(typed.front())) return read_from(typed, arguments);
                  const auto air = input::parse_air(typed.front());
                  if (!air) return wrong("--from " + air.error());
                  arguments.board.from = *air;
                  return {};
                });
}
Option keep() {
  return kept({"--keep OLD.json", "an earlier plan (its --format json): what need not move stays where it was"}, &Arguments::keep);
}
Option effort() {
  Option effort =
      option({"--effort EFFORT",
              "quick (the first good plan), thorough (up to 30\u00a0s more for a better one, or a proof that none is) or so many seconds; "
              "Ctrl-C ends it with the best so far (default quick)"},
             Takes::word, read_effort);
  effort.choices = {"quick", "thorough"};
  return effort;
}
Option units() {
  return choice<Units>({"--units UNITS", "us or metric (default: the shop's)"}, &Arguments::units,
                       {{"us", Units::us}, {"metric", Units::metric}});
}
Option metric_units() { return with_help(units(), "us or metric (default metric)"); }
Option strict() { return flag({"--strict", "exit status 1 when there is any warning"}, &Arguments::strict); }
Option set() {
  return kept(
      {"--set KEY=VALUE",
       "a key of the order or the shop file and its value as written there; may be repeated. Dots lead to keys within; an item of a "
       "list is named by its number, from 1, or its name, as in \"pieces.low\u00a0shelf.parts.top.support=hooks\"; the next number adds "
       "an item. A key that both files have is the order's. Of several orders \"orders.2.\" comes first"},
      &Arguments::set);
}
Option output() { return kept({"-o FILE", "the file to write, whole or not at all"}, &Arguments::output); }
Option force() { return flag({"--force", "also over a file that coatday did not make"}, &Arguments::force); }
Option own() { return kept({"--own FILE", "a file with finishes of your own; may be repeated"}, &Arguments::own); }
Option colour() {
  return choice<Colour>({"--colour WHEN", "never, auto (on a terminal, unless NO_COLOR is set) or always (default auto)"},
                        &Arguments::colour, {{"never", Colour::never}, {"auto", Colour::automatic}, {"always", Colour::always}});
}

Option topic() {
  Option option = kept({"TOPIC", "a topic, or a command (default: lists them all)"}, &Arguments::name);
  for (const Topic& topic : topics()) option.choices.emplace_back(topic.name);
  return option;
}
Option man() { return flag({"--man", "prints the manual page, for man"}, &Arguments::manual); }
Option completion() {
  return choice<std::string>({"--completion NAME", "prints the completion of a shell; NAME is bash"}, &Arguments::completion,
                             {{"bash", "bash"}});
}

}  // namespace coatday::cli
