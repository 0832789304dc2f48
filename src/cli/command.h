#pragma once
// What a command is: its name, what may stand after it, its help and what it does. One file a command declares it; commands.cpp lists them.

#include <functional>
#include <string_view>

#include "cli/arguments.h"
#include "cli/environment.h"

namespace coatday::cli {

using Args = std::vector<std::string>;

/// A line of the help and what it says: "--from TIME", "nothing starts before it". A no-break space keeps words together.
struct Entry {
  std::string label;
  std::string text;
};

/// Something that may stand after a command: an option, which begins with dashes, or what the command is about, which does not.
struct Option {
  std::string name;                                               ///< "--from", "ORDER.yaml"; "-o,--output" has two
  enum class Takes { nothing, word, words } takes = Takes::word;  ///< words: an option may come again, each time with one
  /// Puts what was typed where it belongs, or says what is wrong with it. Called only where something was typed.
  std::function<tl::expected<void, std::string>(const Args& typed, Arguments&)> read;
  std::vector<Entry> help;
  bool needed = false;
};

/// What the help says beside the options, which tell of themselves.
struct About {
  std::string_view summary;
  std::vector<std::string_view> usage;  ///< after the command's name: "ORDER.yaml... [options]"
  std::vector<std::string_view> examples;
  std::string_view more = {};
};

struct Command {
  std::string_view name;
  std::vector<Option> options;
  About about;
  Outcome (*run)(const Arguments&, const Environment&);
};

}  // namespace coatday::cli
