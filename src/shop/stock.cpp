#include "shop/shop.h"

namespace coatday::shop {
namespace {

bool usable(const StockItem& item, LocalDay on, std::optional<Hours> keeps_opened) {
  if (item.good_until && on > *item.good_until) return false;
  return !item.opened || !keeps_opened || on - *item.opened <= *keeps_opened;
}

}  // namespace

Litres usable_stock(const Shop& shop, const std::string& product, LocalDay on, std::optional<Hours> keeps_opened) {
  Litres sum;
  for (const StockItem& item : shop.stock)
    if (item.product == product && usable(item, on, keeps_opened)) sum += item.volume;
  return sum;
}

}  // namespace coatday::shop
