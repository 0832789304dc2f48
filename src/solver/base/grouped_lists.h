#pragma once
// Many short lists in one block of memory.

#include <cstddef>
#include <span>
#include <vector>

#include "solver/base/index.h"

namespace coatday::solver {

/// A list for each of n owners.
template <typename T>
class GroupedLists {
 public:
  struct Entry {
    int owner;
    T item;
  };
  GroupedLists() = default;
  GroupedLists(int owners, const std::vector<Entry>& entries) : begins_(at(owners) + 1), items_(entries.size()) {
    for (const Entry& entry : entries) ++begins_[at(entry.owner) + 1];
    for (std::size_t i = 1; i < begins_.size(); ++i) begins_[i] += begins_[i - 1];
    std::vector<std::size_t> next(begins_.begin(), begins_.end());
    for (const Entry& entry : entries) items_[next[at(entry.owner)]++] = entry.item;
  }
  [[nodiscard]] std::span<const T> operator[](int owner) const {
    const auto i = at(owner);
    return {items_.data() + begins_[i], begins_[i + 1] - begins_[i]};
  }

 private:
  std::vector<std::size_t> begins_;
  std::vector<T> items_;
};

}  // namespace coatday::solver
