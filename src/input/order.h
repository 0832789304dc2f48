#pragma once
// The order: its pieces, the work around their finishing, and what is already done.

#include <string>

#include "input/fields.h"
#include "input/surroundings.h"
#include "job/job.h"

namespace coatday::input {

[[nodiscard]] const Keys& order_keys();
[[nodiscard]] job::Order read_order(const Fields&, const std::string& file, const Surroundings&, Mistakes&);

}  // namespace coatday::input
