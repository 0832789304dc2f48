#pragma once
// What a command did: text for both streams, a file and the exit status. Nothing is written before it is complete.

#include <optional>
#include <string>
#include <vector>

#include "job/plan.h"

namespace coatday::cli {

/// The exit statuses, the same for every command.
enum Status {
  done = 0,
  no_plan = 1,    ///< none is possible, a face would be left behind, or a warning with --strict
  bad_input = 2,  ///< mistakes in files or usage
  our_fault = 3,  ///< the checker refused a plan of our own
};

/// A file to be written, see output_file.h.
struct OutputFile {
  std::string path;
  std::string content;
  std::string mark;    ///< stands near the beginning of every file of this kind that coatday makes
  bool force = false;  ///< also over a file without the mark
};

struct Outcome {
  int status = done;
  std::string out;
  std::string err;
  std::optional<OutputFile> file{};  ///< written before the streams, which speak of it only once it is there
};

/// "coatday: error: ...", ended.
[[nodiscard]] Outcome mistaken(const std::string& message);

/// The exit status for what was found.
[[nodiscard]] int status_of(const std::vector<job::Finding>&, bool strict);
[[nodiscard]] int status_of(const job::Plan&, bool strict);

}  // namespace coatday::cli
