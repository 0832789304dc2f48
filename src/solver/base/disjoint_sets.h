#pragma once
// What hangs together: union-find.

#include <numeric>
#include <vector>

namespace coatday::solver {

class Groups {
 public:
  explicit Groups(int size) : parent_(static_cast<std::size_t>(size)) { std::iota(parent_.begin(), parent_.end(), 0); }
  int of(int i) {
    while (at(i) != i) i = at(i) = at(at(i));
    return i;
  }
  void join(int a, int b) { at(of(a)) = of(b); }

 private:
  int& at(int i) { return parent_[static_cast<std::size_t>(i)]; }
  std::vector<int> parent_;
};

}  // namespace coatday::solver
