#include "planner/model/turns.h"

#include <algorithm>

namespace coatday::planner {

namespace {

/// Between orders that could be ready together. Judgement, no source.
constexpr Hours one_turn{2.4};

}  // namespace

std::map<std::string, solver::Time> turns(const job::Order& all, const Grid& grid) {
  std::vector<std::pair<Instant, std::string>> by_age;
  for (const job::OrderPiece& piece : all.pieces) {
    const bool known = std::any_of(by_age.begin(), by_age.end(), [&](const auto& one) { return one.second == piece.order; });
    if (!piece.promised && !known) by_age.emplace_back(std::max(piece.start.value_or(Instant()), grid.instant(0)), piece.order);
  }
  if (by_age.size() < 2) return {};
  std::stable_sort(by_age.begin(), by_age.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  std::map<std::string, solver::Time> younger;
  for (const auto& [start, order] : by_age) younger.emplace(order, static_cast<solver::Time>(younger.size()) * Grid::steps(one_turn));
  return younger;
}

}  // namespace coatday::planner
