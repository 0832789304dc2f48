#pragma once
// A document at the width of a terminal.

#include <string>

#include "report/document/document.h"
#include "report/document/lines.h"

namespace coatday::report {

[[nodiscard]] std::string render_text(const Document&, const TextStyle&);
/// One block of it, as far left as can be.
[[nodiscard]] Lines block_lines(const Block&, const TextStyle&);
/// One section of it, its title included. Nothing where it is for a page alone.
[[nodiscard]] Lines section_lines(const Section&, const TextStyle&);

}  // namespace coatday::report
