#pragma once
// The solvent of a product: a row of the table, or what its safety data sheet says.

#include "finish/product.h"
#include "input/fields.h"

namespace coatday::input {

/// Fills the product's solvent and its content, where the file gives them.
void read_solvent(const Fields&, finish::Product&);

}  // namespace coatday::input
