#pragma once
// A document for a printer: paper to work from and to write on.

#include <string>

#include "report/document/document.h"
#include "report/document/lines.h"

namespace coatday::report {

/// Each section begins a page, with a form feed between pages; what is too long goes on on the next page, below the same heading. The
/// document's title and subtitle, and the page's number, stand above. Never in colour.
[[nodiscard]] std::string render_pages(const Document&, const TextStyle&);

}  // namespace coatday::report
