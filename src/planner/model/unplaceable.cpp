#include "planner/model/unplaceable.h"

#include <algorithm>
#include <set>

namespace coatday::planner {

namespace {

using solver::Time;

bool open_at(const solver::Intervals& open, Time t) {
  return std::any_of(open.begin(), open.end(), [t](const solver::Interval& i) { return i.begin <= t && t < i.end; });
}

/// When some activity of the family can end, if it only had to suit the hours and the air; sets what can run shared with others of it.
void follow(const solver::Problem& problem, int family, std::vector<bool>& shares) {
  std::vector<std::size_t> members;
  std::set<Time> ends;
  for (std::size_t i = 0; i < problem.activities.size(); ++i) {
    const solver::Activity& a = problem.activities[i];
    if (a.family != family || a.end_shared == nullptr) continue;
    members.push_back(i);
    for (const solver::Interval& open : a.starts) {
      for (Time t = open.begin; t < open.end; ++t) ends.insert(a.end->at(t));
    }
  }
  for (auto end = ends.begin(); end != ends.end(); ++end) {  // grows ahead of itself
    for (Time t = *end; t <= *end + problem.sharing_gap; ++t) {
      for (const std::size_t i : members) {
        const solver::Activity& a = problem.activities[i];
        if (!open_at(a.starts_shared, t)) continue;
        shares[i] = true;
        ends.insert(a.end_shared->at(t));
      }
    }
  }
}

}  // namespace

std::optional<solver::Tag> unplaceable(const solver::Problem& problem) {
  std::vector<bool> shares(problem.activities.size(), false);
  std::set<int> looked_at, in_a_branch;
  for (const solver::Alternative& alternative : problem.alternatives) {
    for (const std::vector<int>& branch : alternative.branches) in_a_branch.insert(branch.begin(), branch.end());
  }
  for (std::size_t i = 0; i < problem.activities.size(); ++i) {
    const solver::Activity& a = problem.activities[i];
    if (a.optional || !a.starts.empty() || in_a_branch.count(static_cast<int>(i)) != 0) continue;
    if (a.end_shared != nullptr && looked_at.insert(a.family).second) follow(problem, a.family, shares);
    if (!shares[i]) return a.tag;
  }
  return std::nullopt;
}

}  // namespace coatday::planner
