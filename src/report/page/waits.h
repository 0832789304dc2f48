#pragma once
// Why days pass on which the shop is open and nothing is put on.

#include <string>
#include <vector>

#include "report/figures/strip.h"

namespace coatday::report::page {

/// A sentence for each coat that such days wait for, with what the air has against it on the first of them.
[[nodiscard]] std::vector<std::string> waits_in(const job::Plan&, const Week&);

}  // namespace coatday::report::page
