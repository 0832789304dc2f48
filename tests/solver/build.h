#pragma once
// Short ways to write down small problems.

#include <utility>

#include "solver/base/problem.h"

namespace coatday::solver::test {

inline int add(Problem& p, Interval starts, Time length, std::vector<Demand> demands = {}, Tag tag = -1) {
  Activity a;
  a.starts = {starts};
  a.end = shift(length);
  a.demands = std::move(demands);
  a.tag = tag;
  p.activities.push_back(std::move(a));
  return static_cast<int>(p.activities.size()) - 1;
}

inline Point start(int activity) { return {activity, Edge::start}; }
inline Point end(int activity) { return {activity, Edge::end}; }

inline Assignment at(Time start, Time end) { return {start, end, true, false}; }
inline Assignment absent() { return {0, 0, false, false}; }

}  // namespace coatday::solver::test
