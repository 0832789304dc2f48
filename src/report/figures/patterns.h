#pragma once
// The fills of the drawings, once for all of them. One is known from the other without colour.

#include "report/document/document.h"

namespace coatday::report::page {

[[nodiscard]] Section patterns();

}  // namespace coatday::report::page
