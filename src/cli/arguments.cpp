// The only file that includes CLI11.
#include "cli/arguments.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <array>
#include <map>

#include "cli/help.h"
#include "quantity/nearest.h"

namespace coatday::cli {
namespace {

using Words = std::vector<std::string>;
const Words command_names{"plan", "buy", "why", "check", "area", "finishes", "schedules"};  // in the order of the enum

std::string suggestion(const std::string& typed, const Words& known) {
  const auto meant = nearest_word(typed, known);
  return meant ? "; did you mean '" + *meant + "'?" : "";
}

/// As typed: quantities and choices are checked afterwards, with better words.
struct Typed {
  Arguments arguments;
  std::string format = "text";
  std::string from;
  std::string units;
  std::string colour = "auto";
  std::string effort = "quick";
};

/// The commands with their options, bound to where the words go.
class Grammar {
 public:
  explicit Grammar(Typed& typed) : typed_(typed) {
    app_.set_help_flag("-h,--help");
    app_.set_version_flag("--version", std::string(version()));
    for (const std::string& name : command_names) add(name, static_cast<Command>(commands_.size()));
  }

  void parse(const Words& words) { app_.parse(Words(words.rbegin(), words.rend())); }

  [[nodiscard]] std::optional<Command> chosen() const {
    for (std::size_t i = 0; i < commands_.size(); ++i) {
      if (commands_[i]->parsed()) return static_cast<Command>(i);
    }
    return std::nullopt;
  }

  /// The long names of the options of a command, with their dashes.
  [[nodiscard]] Words options(Command command) const {
    Words names;
    for (const CLI::Option* option : commands_[static_cast<std::size_t>(command)]->get_options()) {
      for (const std::string& name : option->get_lnames()) names.push_back("--" + name);
    }
    return names;
  }

 private:
  void add(const std::string& name, Command command) {
    CLI::App& app = *app_.add_subcommand(name);
    commands_.push_back(&app);
    app.set_help_flag("-h,--help");
    const bool about_order = command <= Command::area;
    if (about_order) app.add_option("ORDER.yaml", typed_.arguments.orders)->required();
    if (!about_order) {
      app.add_option("NAME", typed_.arguments.name);
      app.add_option("--own", typed_.arguments.own)->allow_extra_args(false);  // one word each time
    }
    if (command == Command::plan) app.add_option("--format", typed_.format);
    if (command <= Command::why) app.add_option("--from", typed_.from);
    if (command <= Command::why) app.add_option("--keep", typed_.arguments.keep);
    if (command <= Command::why) app.add_option("--effort", typed_.effort);
    if (command == Command::plan || command == Command::check) app.add_flag("--strict", typed_.arguments.strict);
    if (command != Command::check) app.add_option("--units", typed_.units);
    app.add_option("--colour", typed_.colour);
  }

  Typed& typed_;
  CLI::App app_;
  std::vector<CLI::App*> commands_;
};

template <class T, std::size_t n>
tl::expected<T, Outcome> choice(const char* option, const std::string& typed, const std::array<std::pair<const char*, T>, n>& known) {
  Words words;
  for (const auto& [word, value] : known) {
    if (typed == word) return value;
    words.emplace_back(word);
  }
  std::string expected;
  for (std::size_t i = 0; i < n; ++i) expected += (i == 0 ? "" : i + 1 == n ? " or " : ", ") + words[i];
  return tl::make_unexpected(mistaken(std::string(option) + " '" + typed + "': expected " + expected + suggestion(typed, words)));
}

constexpr double thorough = 30;  // seconds
constexpr double most_effort = 86'400;

tl::expected<double, Outcome> read_effort(const std::string& typed) {
  if (typed == "quick") return 0;
  if (typed == "thorough") return thorough;
  const auto seconds = parse_count(typed);
  if (seconds && *seconds <= most_effort) return *seconds;
  return tl::make_unexpected(mistaken("--effort '" + typed + "': expected quick, thorough or whole seconds, a day at most" +
                                      suggestion(typed, {"quick", "thorough"})));
}

bool is_yaml(const std::string& word) { return word.ends_with(".yaml") || word.ends_with(".yml"); }

// After the first word, which is an order whatever its name: more orders, then perhaps a step.
std::optional<Outcome> take_event(Arguments& arguments) {
  std::vector<std::string>& words = arguments.orders;
  if (words.size() > 1 && !is_yaml(words.back())) {
    arguments.name = words.back();
    words.pop_back();
  }
  for (std::size_t i = 1; i < words.size(); ++i) {
    if (!is_yaml(words[i])) return mistaken("'" + words[i] + "': a second order's name ends in .yaml, and a single step comes last");
  }
  return std::nullopt;
}

tl::expected<Arguments, Outcome> convert(const Typed& typed, Command command) {
  static constexpr std::array<std::pair<const char*, Format>, 2> formats{{{"text", Format::text}, {"json", Format::json}}};
  static constexpr std::array<std::pair<const char*, Units>, 2> systems{{{"us", Units::us}, {"metric", Units::metric}}};
  static constexpr std::array<std::pair<const char*, Colour>, 3> colours{
      {{"never", Colour::never}, {"auto", Colour::automatic}, {"always", Colour::always}}};
  Arguments arguments = typed.arguments;
  arguments.command = command;
  if (command == Command::why) {
    if (auto wrong = take_event(arguments)) return tl::make_unexpected(*wrong);
  }
  const auto format = choice("--format", typed.format, formats);
  if (!format) return tl::make_unexpected(format.error());
  arguments.format = *format;
  const auto colour = choice("--colour", typed.colour, colours);
  if (!colour) return tl::make_unexpected(colour.error());
  arguments.colour = *colour;
  const auto effort = read_effort(typed.effort);
  if (!effort) return tl::make_unexpected(effort.error());
  arguments.effort = *effort;
  if (!typed.units.empty()) {
    const auto units = choice("--units", typed.units, systems);
    if (!units) return tl::make_unexpected(units.error());
    arguments.units = *units;
  }
  if (!typed.from.empty()) {
    const auto from = parse_local_time(typed.from);
    if (!from) return tl::make_unexpected(mistaken("--from " + from.error()));
    arguments.from = *from;
  }
  return arguments;
}

// What the parser would misread: it takes the next word as the value of "--from=", and keeps silent about a mistyped command.
std::optional<Outcome> misread(const Words& words) {
  if (words.empty()) return mistaken("no command; expected one of those below\n\n" + std::string(help(std::nullopt)));
  for (const std::string& word : words) {
    if (word.starts_with("--") && word.ends_with('=')) return mistaken("'" + word + "' has no value");
    if (word.empty()) return mistaken("an empty word on the command line");
  }
  const std::string& first = words.front();
  if (first.starts_with('-') || std::find(command_names.begin(), command_names.end(), first) != command_names.end()) return std::nullopt;
  return mistaken("unknown command '" + first + "'" + suggestion(first, command_names) + " (coatday --help lists them)");
}

// The parser's own words, but for an option that was mistyped.
Outcome refused(const CLI::ParseError& error, const Grammar& grammar, const Words& words) {
  const auto command = grammar.chosen();
  if (!command) return mistaken(std::string(error.what()) + " (coatday --help says more)");
  const std::string more = " (coatday " + command_names[static_cast<std::size_t>(*command)] + " --help says more)";
  const Words known = grammar.options(*command);
  for (const std::string& word : words) {
    const std::string option = word.substr(0, word.find('='));
    if (!option.starts_with("--") || std::find(known.begin(), known.end(), option) != known.end()) continue;
    return mistaken("unknown option '" + option + "'" + suggestion(option, known) + more);
  }
  return mistaken(std::string(error.what()) + more);
}

}  // namespace

tl::expected<Arguments, Outcome> read_arguments(const std::vector<std::string>& words) {
  if (auto outcome = misread(words)) return tl::make_unexpected(*outcome);
  Typed typed;
  Grammar grammar(typed);
  try {
    grammar.parse(words);
  } catch (const CLI::CallForHelp&) {
    return tl::make_unexpected(Outcome{done, std::string(help(grammar.chosen())), ""});
  } catch (const CLI::CallForVersion&) {
    return tl::make_unexpected(Outcome{done, "coatday " + std::string(version()) + "\n", ""});
  } catch (const CLI::ParseError& error) {
    return tl::make_unexpected(refused(error, grammar, words));
  }
  if (const auto command = grammar.chosen()) return convert(typed, *command);
  return tl::make_unexpected(mistaken("no command (coatday --help lists them)"));
}

}  // namespace coatday::cli
