#pragma once
// Union-find: sets that grow by joining.

#include <numeric>
#include <vector>

#include "solver/base/index.h"

namespace coatday::solver {

class DisjointSets {
 public:
  explicit DisjointSets(int size) : parent_(at(size)) { std::iota(parent_.begin(), parent_.end(), 0); }
  int of(int i) {
    while (parent(i) != i) i = parent(i) = parent(parent(i));
    return i;
  }
  void join(int a, int b) { parent(of(a)) = of(b); }

 private:
  int& parent(int i) { return parent_[at(i)]; }
  std::vector<int> parent_;
};

}  // namespace coatday::solver
