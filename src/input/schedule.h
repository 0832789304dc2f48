#pragma once
// Finishing schedules and their steps.

#include <map>
#include <string>

#include "finish/schedule.h"
#include "input/finish_item.h"
#include "input/mistakes.h"

namespace coatday::input {

[[nodiscard]] finish::Schedule read_schedule(const FinishItem&, const std::map<std::string, finish::Product>& products, Mistakes&);

}  // namespace coatday::input
