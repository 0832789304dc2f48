#pragma once
// A product from a finish file, alone or on top of what it is like.

#include <map>
#include <string>

#include "finish/product.h"
#include "input/fields.h"

namespace coatday::input {

/// A product while its layers are put on each other.
struct ProductDraft {
  finish::Product product;
  Notes notes;           ///< sources and places of all keys given so far
  bool is_whole = true;  ///< no layer was unreadable
  bool drying_law_given = false;
  bool cure_law_given = false;
};

/// Puts what a file gives for a product on top of the draft. `id` names it from now on.
void add_layer(ProductDraft& draft, const std::string& id, const Value&, const std::map<std::string, std::string>& known_sources,
               Mistakes&);

}  // namespace coatday::input
