#pragma once
// Files that coatday writes: whole or not at all, and never over a file that it did not make, unless asked.

#include <optional>
#include <string>
#include <string_view>

#include <tl/expected.hpp>

#include "cli/arguments.h"
#include "cli/outcome.h"

namespace coatday::cli {

/// Why a file may not be written there: no such folder, a folder itself, or a file that has something in it but not the mark, and no force.
[[nodiscard]] std::optional<std::string> refusal(const std::string& path, std::string_view mark, bool force);

/// A temporary file beside it takes its name when all of it is on the disk; what was there before stays until then, with its permissions.
/// On failure, why not, and nothing has changed.
[[nodiscard]] tl::expected<void, std::string> write_file(const OutputFile&);

/// Where -o names a file that may not be written, the mistake: asked before the work, which may take a while.
[[nodiscard]] std::optional<Outcome> refused_output(const Arguments&, std::string_view mark);
/// The outcome with its text meant for the file that -o names. The terminal shows the file's name and the announcement.
[[nodiscard]] Outcome to_file(const Arguments&, Outcome, std::string_view mark, const std::string& announcement);
/// The outcome with its file written, or the mistake.
[[nodiscard]] Outcome written(Outcome);

}  // namespace coatday::cli
