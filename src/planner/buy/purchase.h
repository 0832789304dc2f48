#pragma once
// What finish to buy: what the coats take, what stays in tools and cups, less what is on the shelf, in whole cans.

#include <map>
#include <span>
#include <string>
#include <vector>

#include "job/plan.h"

namespace coatday::planner {

/// What the coats of one product take by one method.
struct Need {
  std::string product;  ///< id
  finish::Method method = finish::Method::brush;
  SquareMetres area;  ///< all coats together
  Litres litres;      ///< from the can, losses of sessions not in it
  int sessions = 0;   ///< times that a tool is wetted and cleaned
  LocalDay first_use;
};

/// Finish that stays in the tool, cup or hose of each session. Common practice, no source.
[[nodiscard]] Litres session_loss(finish::Method);

/// One row a product, two for a product of two parts, in the order of the products' first needs. Stock counts if it is still good on the day
/// of the first use. Where less than a twentieth would be left, one more of the smallest cans is bought. A product without cans is bought as needed: nothing to buy, nothing left over.
///
/// Cans of a two-part product are sets with both parts in the ratio of the mix. A set's size counts the two together; its base and its
/// hardener each have a row, in which sizes are the part's share of the set. The base bears the set's price, the hardener comes with it.
[[nodiscard]] std::vector<job::Purchase> purchase(std::span<const Need>, const std::map<std::string, finish::Product>&, const shop::Shop&);

}  // namespace coatday::planner
