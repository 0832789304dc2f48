#include "cli/options.h"

#include <utility>

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

std::string listed(const Words& words) {
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i) text += (i == 0 ? "" : i + 1 == words.size() ? " or " : ", ") + words[i];
  return text;
}

/// One word of several, for a member of the arguments.
template <class T, class Member>
Option choice(const std::string& name, Member member, const Choices<T>& known) {
  return {name, Takes::word, [=](const Words& typed, Arguments& arguments) -> Read {
            Words words;
            for (const auto& [word, value] : known) {
              words.push_back(word);
              if (word != typed.front()) continue;
              arguments.*member = value;
              return {};
            }
            return wrong(name + " '" + typed.front() + "': expected " + listed(words) + suggestion(typed.front(), words));
          }};
}

/// The words as they are.
Option kept(const std::string& name, std::string Arguments::*member) {
  return {name, Takes::word, [member](const Words& typed, Arguments& arguments) -> Read {
            arguments.*member = typed.front();
            return {};
          }};
}
Option kept(const std::string& name, Words Arguments::*member) {
  return {name, Takes::words, [member](const Words& typed, Arguments& arguments) -> Read {
            arguments.*member = typed;
            return {};
          }};
}

/// Said or not.
Option flag(const std::string& name, bool Arguments::*member) {
  return {name, Takes::nothing, [member](const Words&, Arguments& arguments) -> Read {
            arguments.*member = true;
            return {};
          }};
}

constexpr double thorough = 30;  // seconds
constexpr double most_effort = 86'400;

Read read_effort(const Words& words, Arguments& arguments) {
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

Read read_from(const Words& typed, Arguments& arguments) {
  const auto from = parse_local_time(typed.front());
  if (!from) return wrong("--from " + from.error());
  arguments.from = *from;
  return {};
}

Read read_at(const Words& typed, Arguments& arguments) {
  const auto air = input::parse_air(typed.front());
  if (!air) return wrong("--at " + air.error());
  arguments.at = *air;
  return {};
}

/// A property of a board, as `parse` reads it.
template <class Parse, class Member>
Option of_board(const std::string& name, Parse parse, Member member) {
  return {name, Takes::word, [=](const Words& typed, Arguments& arguments) -> Read {
            const auto value = parse(typed.front());
            if (!value) return wrong(name + " " + value.error());
            arguments.board.*member = *value;
            return {};
          }};
}

bool is_yaml(const std::string& word) { return word.ends_with(".yaml") || word.ends_with(".yml"); }

// After the first word, which is an order whatever its name: more orders, then perhaps a step.
Read read_event(const Words& typed, Arguments& arguments) {
  Words words = typed;
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

Read read_shop(const Words& typed, Arguments& arguments) {
  arguments.shop = typed.front();
  arguments.orders.assign(typed.begin() + 1, typed.end());
  return {};
}

constexpr int most_days = 366;

Read read_days(const Words& typed, Arguments& arguments) {
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

std::string suggestion(const std::string& typed, const Words& known) {
  const auto meant = nearest_word(typed, known);
  return meant ? "; did you mean '" + *meant + "'?" : "";
}

Option orders() { return needed(kept("ORDER.yaml", &Arguments::orders)); }
Option orders_and_event() { return needed({"ORDER.yaml", Takes::words, read_event}); }
Option shop_and_orders() { return needed({"SHOP.yaml", Takes::words, read_shop}); }
Option name() { return kept("NAME", &Arguments::name); }

Option format() { return choice<Format>("--format", &Arguments::format, {{"text", Format::text}, {"json", Format::json}}); }
Option format_or_table() {
  return choice<Format>("--format", &Arguments::format, {{"text", Format::text}, {"json", Format::json}, {"csv", Format::csv}});
}
Option text_or_table() { return choice<Format>("--format", &Arguments::format, {{"text", Format::text}, {"csv", Format::csv}}); }
Option calendar_format() { return choice<Format>("--format", &Arguments::format, {{"ics", Format::text}, {"csv", Format::csv}}); }
Option days() { return {"--days", Takes::word, read_days}; }
Option finish() { return kept("--finish", &Arguments::finishes); }
Option fit() { return kept("--fit", &Arguments::fit); }
Option from() { return {"--from", Takes::word, read_from}; }
Option at() { return {"--at", Takes::word, read_at}; }
Option species() { return of_board("--species", input::parse_species, &BoardAsked::species); }
Option width() { return of_board("--width", parse_length, &BoardAsked::width); }
Option cut() { return of_board("--cut", input::parse_ring_angle, &BoardAsked::cut); }
Option from_air_or_time() {
  return {"--from", Takes::word, [](const Words& typed, Arguments& arguments) -> Read {
            if (parse_local_time(typed.front())) return read_from(typed, arguments);
            const auto air = input::parse_air(typed.front());
            if (!air) return wrong("--from " + air.error());
            arguments.board.from = *air;
            return {};
          }};
}
Option keep() { return kept("--keep", &Arguments::keep); }
Option effort() { return {"--effort", Takes::word, read_effort}; }
Option units() { return choice<Units>("--units", &Arguments::units, {{"us", Units::us}, {"metric", Units::metric}}); }
Option strict() { return flag("--strict", &Arguments::strict); }
Option set() { return kept("--set", &Arguments::set); }
Option output() { return kept("-o", &Arguments::output); }
Option force() { return flag("--force", &Arguments::force); }
Option own() { return kept("--own", &Arguments::own); }
Option colour() {
  return choice<Colour>("--colour", &Arguments::colour,
                        {{"never", Colour::never}, {"auto", Colour::automatic}, {"always", Colour::always}});
}

}  // namespace coatday::cli
