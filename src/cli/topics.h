#pragma once
// The topics of `coatday help`. Their texts are files of their own in topics/, built in by topic_texts.cpp.in.

#include <string_view>
#include <vector>

#include "cli/command.h"

namespace coatday::cli {

struct Topic {
  std::string_view name;
  std::string_view text;  ///< as in its file: the title in the first line, then paragraphs and entries
};

[[nodiscard]] const std::vector<Topic>& topics();
[[nodiscard]] std::string_view title(const Topic&);
/// What follows the title. A paragraph has no label. An indented line begins an entry: the label, two spaces, what it says. Lines that are
/// indented further go on with it.
[[nodiscard]] std::vector<Entry> blocks(const Topic&);

}  // namespace coatday::cli
