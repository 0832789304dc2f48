#pragma once
// Products in layers: a product may start from another one, and a later file's product stands on an earlier one's of the same id.

#include <map>
#include <span>
#include <string>

#include "finish/product.h"
#include "input/finish_item.h"
#include "input/mistakes.h"

namespace coatday::input {

[[nodiscard]] std::map<std::string, finish::Product> read_products(std::span<const FinishItem> items, Mistakes&);

}  // namespace coatday::input
