#pragma once
// What may go over what.

#include <set>
#include <string>

#include "finish/catalogue.h"
#include "input/finish_item.h"
#include "input/mistakes.h"

namespace coatday::input {

[[nodiscard]] finish::OverRule read_over_rule(const FinishItem&, const std::set<std::string>& families, Mistakes&);

}  // namespace coatday::input
