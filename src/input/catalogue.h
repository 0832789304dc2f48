#pragma once
// Finish files: products, schedules and the rules of what goes over what.

#include <span>

#include "finish/catalogue.h"
#include "input/fields.h"
#include "input/mistakes.h"
#include "input/value.h"

namespace coatday::input {

[[nodiscard]] const Keys& finish_keys();  ///< of a finish file

/// Files in the order in which later ones win.
[[nodiscard]] finish::Catalogue read_catalogue(std::span<const Value* const> files, Mistakes&);

}  // namespace coatday::input
