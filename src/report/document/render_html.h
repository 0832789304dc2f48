#pragma once
// A document as one HTML file that needs no other and reads without its script.

#include <string>
#include <string_view>

#include "report/document/document.h"

namespace coatday::report {

/// Stands near the beginning of every page.
inline constexpr std::string_view page_mark = "<meta name=\"generator\" content=\"coatday\">";

/// What stands around the document.
struct PageFrame {
  std::string house;  ///< the shop, above the title
  std::string key;    ///< ticks are kept under it
  std::string foot;
};

[[nodiscard]] std::string render_html(const Document&, const PageFrame&);

}  // namespace coatday::report
