#pragma once
// The fills of the drawings, once for all of them. They are told apart without colour.

#include "report/document/document.h"

namespace coatday::report::page {

[[nodiscard]] Section patterns();

}  // namespace coatday::report::page
