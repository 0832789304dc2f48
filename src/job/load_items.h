#pragma once
// Which items of which parts a load holds. Its id says it, so that what is recorded as done says it, too.

#include <string>
#include <string_view>
#include <vector>

namespace coatday::job {

/// Items `first` to `last` of a part, from 1.
struct ItemRange {
  std::string part;  ///< its id
  int first = 1;
  int last = 1;

  bool operator==(const ItemRange&) const = default;
};
using LoadItems = std::vector<ItemRange>;

/// "top", "leg.1-4", "rail.1-2+leg.3". A part's only item has no number.
[[nodiscard]] std::string load_id(const LoadItems&, const std::vector<bool>& only_item);
/// Empty for a text that is no id of a load.
[[nodiscard]] LoadItems items_of(std::string_view load_id);

/// Are all these items among those?
[[nodiscard]] bool within(const LoadItems& these, const LoadItems& those);

}  // namespace coatday::job
