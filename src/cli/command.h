#pragma once
// What a command is: a row that says what may stand after it, what has to be ready for it, and how it writes its answer. The parser, the
// help, the manual and the completion are all made from these rows.

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "cli/arguments.h"
#include "cli/outcome.h"
#include "job/request.h"

namespace coatday::cli {

struct View;

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
  std::function<tl::expected<void, std::string>(const Args& typed, Arguments&)> read{};
  std::vector<Entry> help{};
  bool needed = false;
  Args choices{};  ///< words to offer: all that it takes, or some; empty: none are known
};

/// What the help says of the command itself. The options speak for themselves.
struct About {
  std::string_view brief;  ///< after the name, in the list of all commands
  std::string_view summary;
  std::vector<std::string_view> usage;  ///< after the command's name: "ORDER.yaml..."
  std::vector<std::string_view> examples;
  std::string_view more = {};
};

/// What has to be ready before a command writes. What the command line does not name is left out: `wood --at` has no order.
enum class Needs {
  nothing,
  catalogue,  ///< the finishes alone
  shop,       ///< the shop's file, and orders of it where they are named
  job,        ///< the orders with their shop
  plan,       ///< the same, planned and checked
  two_plans,  ///< the same; where keys are set, the plan without them, too
};

/// One format in which a command writes.
struct Output {
  std::string_view format;   ///< as typed after --format
  std::string_view purpose;  ///< "for people"
  Outcome (*write)(const View&);
  std::string file_mark = {};  ///< stands near the beginning of every such file that coatday makes
};

struct Command {
  std::string_view name;
  std::string_view group;  ///< commands of one group follow each other in commands.cpp
  Needs needs = Needs::nothing;
  job::AdviceDepth advice = job::AdviceDepth::none;
  std::vector<Option> options{};
  std::vector<Output> outputs{};  ///< the first is the default
  About about{};
  /// What is wrong with the arguments beside each other, found before any file is read.
  std::optional<std::string> (*misuse)(const Arguments&) = nullptr;
  /// What the terminal shows after the name of the file, once the file is there.
  std::string (*announcement)(const View&) = nullptr;
  /// Writes nothing where there is no plan. Reasons, and what is wrong with a plan, go to the error stream: the output is for paper or programs.
  bool only_plans = false;
};

}  // namespace coatday::cli
