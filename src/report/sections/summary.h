#pragma once
// The first screen: when is it ready, is that in time, what must be bought, is any face left behind.

#include <optional>

#include "job/plan.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report {

/// A terminal has it below the title; a page shows the answers large.
[[nodiscard]] std::optional<Section> summary(const job::Plan&, const Texts&);
/// "from Wed 3 Mar 2027", beside a paper's title.
[[nodiscard]] std::string from_text(const job::Plan&, const Texts&);

}  // namespace coatday::report
