#pragma once
// The shop from its file.

#include <string>

#include "finish/catalogue.h"
#include "input/fields.h"
#include "shop/rates.h"
#include "shop/shop.h"

namespace coatday::input {

[[nodiscard]] const Keys& shop_keys();
/// The shop, as good as it can be read. Stock must be of the catalogue's products.
[[nodiscard]] shop::Shop read_shop(const Fields&, const finish::Catalogue&, Mistakes&);
/// What it asks for its work; money needs its currency.
[[nodiscard]] shop::Rates read_rates(const Fields&, const std::string& currency);

}  // namespace coatday::input
