#pragma once
// What a command is: its name, what may stand after it, its help and what it does. One file a command declares it; commands.cpp lists them.

#include <functional>
#include <string_view>

#include "cli/arguments.h"
#include "cli/world.h"

namespace coatday::cli {

using Words = std::vector<std::string>;

/// Something that may stand after a command: an option, which begins with dashes, or what the command is about, which does not.
struct Option {
  std::string name;                                               ///< "--from", "ORDER.yaml"; "-o,--output" has two
  enum class Takes { nothing, word, words } takes = Takes::word;  ///< words: an option may come again, each time with one
  /// Puts what was typed where it belongs, or says what is wrong with it. Called only where something was typed.
  std::function<tl::expected<void, std::string>(const Words& typed, Arguments&)> read;
  bool needed = false;
};

struct Command {
  std::string_view name;
  std::vector<Option> options;
  std::string_view help;  ///< written by hand; a test holds it to the options
  Outcome (*run)(const Arguments&, const World&);
};

}  // namespace coatday::cli
