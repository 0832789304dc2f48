#pragma once
// The command line as a value.

#include <optional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "cli/outcome.h"
#include "climate/air.h"
#include "quantity/text.h"
#include "wood/movement.h"

namespace coatday::cli {

using Args = std::vector<std::string>;

struct Command;
enum class Colour { never, automatic, always };

/// A board that comes from another air; its four belong together.
struct BoardAsked {
  std::string species;  ///< its id
  std::optional<Metres> width;
  std::optional<wood::RingAngle> cut;
  std::optional<climate::Air> from;
};

struct Arguments {
  const Command* command = nullptr;
  std::vector<std::string> orders;  ///< paths of the order files, planned together
  std::optional<climate::Air> at;   ///< the air that a finish or wood is asked about
  BoardAsked board;
  std::string name;                   ///< event, finish or schedule; empty: all of them
  std::string shop;                   ///< path of a shop file, with or without orders
  std::vector<std::string> finishes;  ///< ids of products
  std::string fit;                    ///< path of a logger's table; empty: none
  int days = 7;                       ///< to show
  std::vector<std::string> own;       ///< files with finishes of the user's own
  std::vector<std::string> set;       ///< keys of the order or the shop with other values, "air.night=13 C"
  std::string format;                 ///< one of the command's outputs; empty: the first of them
  std::optional<LocalTime> from;      ///< in the shop's zone
  std::optional<Units> units;
  double effort = 0;  ///< seconds to go on looking for a better plan and a proof; 0: the first good plan
  std::string keep;   ///< the file of an earlier plan; empty: none
  bool strict = false;
  std::string output;  ///< path of the file to write; empty: standard output
  bool force = false;  ///< the output file may overwrite one that coatday did not make
  Colour colour = Colour::automatic;
  bool manual = false;     ///< the help prints the manual page
  std::string completion;  ///< the shell of the completion that the help prints; empty: none
};

/// Without the program's name. Help, version and mistakes are outcomes already.
[[nodiscard]] tl::expected<Arguments, Outcome> read_arguments(const Args&);

}  // namespace coatday::cli
