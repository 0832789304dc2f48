#include "solver/clause_learning/theta_lambda_tree.h"

#include <algorithm>

namespace coatday::solver::clause_learning {
namespace {

constexpr Time least = -unreachable;

Time sum(Time end, Time length) { return end <= least ? least : end + length; }

}  // namespace

void ThetaLambdaTree::fill(const std::vector<Work>& all) {
  leaves_ = 1;
  while (leaves_ < static_cast<int>(all.size())) leaves_ *= 2;
  nodes_.assign(at(2 * leaves_), {0, least, 0, least});
  for (std::size_t p = 0; p < all.size(); ++p) {
    const auto [earliest, length] = all[p];
    nodes_[at(leaves_) + p] = {length, earliest + length, length, earliest + length};
  }
  for (int i = leaves_ - 1; i > 0; --i) join(i);
}

void ThetaLambdaTree::remove(int place) { put(place, {0, least, 0, least}); }

void ThetaLambdaTree::set_aside(int place, Time earliest, Time length) { put(place, {0, least, length, earliest + length}); }

void ThetaLambdaTree::put(int place, Node node) {
  int i = leaves_ + place;
  nodes_[at(i)] = node;
  for (i /= 2; i > 0; i /= 2) join(i);
}

void ThetaLambdaTree::join(int i) {
  const Node &l = nodes_[at(2 * i)], &r = nodes_[at(2 * i + 1)];
  nodes_[at(i)] = {l.sum + r.sum, std::max(r.end, sum(l.end, r.sum)), std::max(l.sum_more + r.sum, l.sum + r.sum_more),
                   std::max({r.end_more, sum(l.end, r.sum_more), sum(l.end_more, r.sum)})};
}

int ThetaLambdaTree::who() const {
  int i = 1;
  bool by_sum = false;  // whether to look for the candidate behind sum_more, or behind end_more
  while (i < leaves_) {
    const Node &l = nodes_[at(2 * i)], &r = nodes_[at(2 * i + 1)], &n = nodes_[at(i)];
    if (by_sum) {
      i = n.sum_more == l.sum_more + r.sum && l.sum_more != l.sum ? 2 * i : 2 * i + 1;
    } else if (n.end_more == r.end_more) {
      i = 2 * i + 1;
    } else if (n.end_more == sum(l.end, r.sum_more)) {
      i = 2 * i + 1;
      by_sum = true;
    } else {
      i = 2 * i;
    }
  }
  return i - leaves_;
}

int ThetaLambdaTree::first(bool more) const {
  int i = 1;
  while (i < leaves_) {
    const Node &l = nodes_[at(2 * i)], &r = nodes_[at(2 * i + 1)], &n = nodes_[at(i)];
    if (!more) {
      i = n.end == r.end ? 2 * i + 1 : 2 * i;
    } else if (n.end_more == r.end_more) {
      i = 2 * i + 1;
    } else if (n.end_more == sum(l.end, r.sum_more)) {
      i = 2 * i;
      more = false;
    } else {
      i = 2 * i;
    }
  }
  return i - leaves_;
}

}  // namespace coatday::solver::clause_learning
