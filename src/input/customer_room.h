#pragma once
// The room where an order will live: set points by the month, or outdoor air through a house.

#include <filesystem>

#include "input/fields.h"
#include "input/surroundings.h"
#include "job/job.h"

namespace coatday::input {

/// The key 'customer room': the air where the order will live. Empty where it is not given, or after a mistake.
[[nodiscard]] job::AirMaker read_customer_room(const Fields& order, const std::filesystem::path& file, const Surroundings&, Mistakes&);

}  // namespace coatday::input
