#pragma once
// The plain values of a product, as finish/product_keys.h lists them.

#include <span>
#include <string_view>
#include <vector>

#include "finish/product_keys.h"
#include "input/fields.h"

namespace coatday::input {

[[nodiscard]] Keys key_list(std::span<const finish::ProductKey>);

/// Puts every value that is given and right into the product. Returns the keys of those.
std::vector<std::string_view> read_values(const Fields&, std::span<const finish::ProductKey>, finish::Product&);

}  // namespace coatday::input
