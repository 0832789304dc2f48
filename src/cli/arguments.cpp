// The only file that includes CLI11.
#include "cli/arguments.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <deque>

#include "cli/commands.h"
#include "cli/help_text.h"
#include "cli/options.h"
#include "cli/version.h"

namespace coatday::cli {
namespace {

/// What stood after one option: quantities and choices are read afterwards, with better words.
struct Typed {
  const Option* option = nullptr;
  CLI::Option* parsed = nullptr;
  std::string word;
  Args words;
  bool flag = false;
};

/// The commands with their options, bound to where the words go.
class Grammar {
 public:
  Grammar() {
    app_.set_help_flag("-h,--help");
    app_.set_version_flag("--version", std::string(version()));
    app_.require_subcommand(0, 1);  // after a command, the name of another is a word like any other
    for (const Command& command : commands()) add(command);
  }

  void parse(const Args& words) { app_.parse(Args(words.rbegin(), words.rend())); }

  [[nodiscard]] const Command* chosen() const {
    const auto at = std::find_if(taken_.begin(), taken_.end(), [](const Taken& taken) { return taken.app->parsed(); });
    return at == taken_.end() ? nullptr : at->command;
  }

  /// The long names of the options of a command, with their dashes.
  [[nodiscard]] Args options(const Command& command) const {
    Args names;
    for (const CLI::Option* option : of(command).app->get_options()) {
      for (const std::string& name : option->get_lnames()) names.push_back("--" + name);
    }
    return names;
  }

  [[nodiscard]] tl::expected<Arguments, Outcome> arguments(const Command& command) const {
    Arguments arguments;
    arguments.command = &command;
    for (const Typed& typed : of(command).typed) {
      if (typed.parsed->count() == 0) continue;
      const bool several = typed.option->takes == Option::Takes::words;
      if (auto read = typed.option->read(several ? typed.words : Args{typed.word}, arguments); !read) {
        return tl::make_unexpected(mistaken(read.error()));
      }
    }
    return arguments;
  }

 private:
  struct Taken {
    const Command* command;
    CLI::App* app;
    std::deque<Typed> typed{};  // the parser keeps references
  };

  [[nodiscard]] const Taken& of(const Command& command) const {
    return *std::find_if(taken_.begin(), taken_.end(), [&](const Taken& taken) { return taken.command == &command; });
  }

  void add(const Command& command) {
    Taken& taken = taken_.emplace_back(Taken{&command, app_.add_subcommand(std::string(command.name))});
    taken.app->set_help_flag("-h,--help");
    for (const Option& option : command.options) add(option, *taken.app, taken.typed.emplace_back());
  }

  static void add(const Option& option, CLI::App& app, Typed& typed) {
    typed.option = &option;
    const bool dashed = option.name.starts_with('-');
    if (option.takes == Option::Takes::nothing) typed.parsed = app.add_flag(option.name, typed.flag);
    if (option.takes == Option::Takes::word) typed.parsed = app.add_option(option.name, typed.word);
    if (option.takes == Option::Takes::words) typed.parsed = app.add_option(option.name, typed.words);
    if (option.takes == Option::Takes::words && dashed) typed.parsed->allow_extra_args(false);  // one word each time
    typed.parsed->required(option.needed);
  }

  CLI::App app_;
  std::deque<Taken> taken_;
};

Args names_of_commands() {
  Args names;
  for (const Command& command : commands()) names.emplace_back(command.name);
  return names;
}

bool is_control(char c) { return (c >= 0 && c < ' ') || c == 0x7F; }

// What the parser would misread: it takes the next word as the value of "--from=", and keeps silent about a mistyped command.
std::optional<Outcome> misread(const Args& words) {
  if (words.empty()) return mistaken("no command; expected one of those below\n\n" + help());
  for (const std::string& word : words) {
    if (word.starts_with("--") && word.ends_with('=')) return mistaken("'" + word + "' has no value");
    if (word.empty()) return mistaken("an empty word on the command line");
    std::string shown = word;
    std::ranges::replace_if(shown, is_control, '?');
    if (shown != word)
      return mistaken("a control character stands in '" + shown + "', where each is shown as '?'; rename the file, or type it anew");
  }
  const std::string& first = words.front();
  const Args known = names_of_commands();
  if (first.starts_with('-') || std::find(known.begin(), known.end(), first) != known.end()) return std::nullopt;
  return mistaken("unknown command '" + first + "'" + suggestion(first, known) + " (coatday --help lists them)");
}

// The parser's own words, but for an option that was mistyped.
Outcome refused(const CLI::ParseError& error, const Grammar& grammar, const Args& words) {
  const Command* command = grammar.chosen();
  if (command == nullptr) return mistaken(std::string(error.what()) + " (coatday --help says more)");
  const std::string more = " (coatday " + std::string(command->name) + " --help says more)";
  const Args known = grammar.options(*command);
  for (const std::string& word : words) {
    const std::string option = word.substr(0, word.find('='));
    if (!option.starts_with("--") || std::find(known.begin(), known.end(), option) != known.end()) continue;
    return mistaken("unknown option '" + option + "'" + suggestion(option, known) + more);
  }
  return mistaken(std::string(error.what()) + more);
}

}  // namespace

tl::expected<Arguments, Outcome> read_arguments(const Args& words) {
  if (auto outcome = misread(words)) return tl::make_unexpected(*outcome);
  Grammar grammar;
  try {
    grammar.parse(words);
  } catch (const CLI::CallForHelp&) {
    const Command* command = grammar.chosen();
    return tl::make_unexpected(Outcome{done, command == nullptr ? help() : help(*command), ""});
  } catch (const CLI::CallForVersion&) {
    return tl::make_unexpected(Outcome{done, "coatday " + std::string(version()) + "\n", ""});
  } catch (const CLI::ParseError& error) {
    return tl::make_unexpected(refused(error, grammar, words));
  }
  if (const Command* command = grammar.chosen()) return grammar.arguments(*command);
  return tl::make_unexpected(mistaken("no command (coatday --help lists them)"));
}

}  // namespace coatday::cli
