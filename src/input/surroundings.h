#pragma once
// What the parts of an order are read against.

#include "finish/catalogue.h"
#include "input/files.h"
#include "shop/shop.h"

namespace coatday::input {

/// No shop where its file has mistakes: nothing that depends on it is then checked.
struct Surroundings {
  const finish::Catalogue& catalogue;
  const shop::Shop* shop = nullptr;
  Files* files = nullptr;  ///< reads the files that the order names
};

}  // namespace coatday::input
