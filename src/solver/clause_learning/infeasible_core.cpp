#include "solver/clause_learning/infeasible_core.h"

#include <algorithm>
#include <limits>
#include <set>

#include "solver/base/index.h"

namespace coatday::solver {
namespace {

using Tags = std::vector<Tag>;

// Whether a schedule stays sound without its remedies. Not if a remedy ends a hold, or if another activity may share its set-up.
bool remedies_may_go(const Problem& p) {
  const auto optional = [&](int a) { return p.activities[at(a)].optional; };
  return std::none_of(p.activities.begin(), p.activities.end(), [](const Activity& a) { return a.optional && a.family >= 0; }) &&
         std::none_of(p.holds.begin(), p.holds.end(), [&](const Hold& hold) {
           return std::any_of(hold.until.begin(), hold.until.end(), optional) || (hold.limit && optional(hold.limit_from.activity));
         });
}

// The activities that are in every branch.
std::vector<int> in_all(const Alternative& alternative) {
  std::vector<int> result = alternative.branches.empty() ? std::vector<int>{} : alternative.branches.front();
  std::erase_if(result, [&](int a) {
    return std::any_of(alternative.branches.begin(), alternative.branches.end(),
                       [a](const auto& branch) { return std::find(branch.begin(), branch.end(), a) == branch.end(); });
  });
  return result;
}

// The problem without the requirements that have a tag, but none of these tags.
Problem relaxed(Problem p, const Tags& kept) {
  const auto dropped = [&](const auto& item) { return item.tag >= 0 && !std::binary_search(kept.begin(), kept.end(), item.tag); };
  for (Activity& a : p.activities) {
    if (!dropped(a)) continue;
    const Time first = a.starts.empty() ? p.origin : std::min(p.origin, a.starts.front().begin);
    a.starts = {{first, p.horizon + 1}};
    a.starts_shared.clear();
  }
  for (Resource& r : p.resources) {
    if (dropped(r)) r = {std::numeric_limits<int>::max() / 2, r.tag, 0};
  }
  std::erase_if(p.minimum_lags, dropped);
  std::erase_if(p.maximum_lags, dropped);
  std::erase_if(p.holds, dropped);
  std::erase_if(p.exclusions, dropped);
  for (Alternative& alternative : p.alternatives) {
    if (dropped(alternative)) alternative.branches.push_back(in_all(alternative));
  }
  p.goals.clear();
  return p;
}

bool impossible(const Problem& problem, const Tags& kept, const SearchLimits& limits) {
  const Problem less = relaxed(problem, kept);
  Search search(less);
  return search.improve(std::nullopt, nullptr, limits).infeasible;
}

}  // namespace

std::vector<Tag> tags_of(const Problem& p) {
  std::set<Tag> tags;
  for (const Activity& a : p.activities) tags.insert(a.tag);
  for (const Resource& r : p.resources) tags.insert(r.tag);
  for (const MinimumLag& lag : p.minimum_lags) tags.insert(lag.tag);
  for (const MaximumLag& lag : p.maximum_lags) tags.insert(lag.tag);
  for (const Hold& hold : p.holds) tags.insert(hold.tag);
  for (const Exclusion& exclusion : p.exclusions) tags.insert(exclusion.tag);
  for (const Alternative& alternative : p.alternatives) tags.insert(alternative.tag);
  tags.erase(tags.begin(), tags.lower_bound(0));
  return {tags.begin(), tags.end()};
}

std::optional<Tags> infeasible_subset(const Problem& problem, const SearchLimits& each, double seconds) {
  const Stopwatch stopwatch(each.clock);
  const auto over = [&] { return (each.stop != nullptr && each.stop->load()) || (seconds > 0 && stopwatch.has_run(seconds)); };
  // A try builds the problem anew, for which it takes longer the more it has of activities and of time.
  constexpr double patience = 1e7;
  const double size_of_problem = static_cast<double>(problem.activities.size()) * (problem.horizon - problem.origin);
  const int most_tries = static_cast<int>(std::clamp(patience / std::max(1.0, size_of_problem), 4.0, 60.0));
  int tries = 0;
  if (!Search::supports(problem)) return std::nullopt;
  if (!remedies_may_go(problem)) return std::nullopt;
  Tags kept = tags_of(problem);
  if (!impossible(problem, kept, each)) return std::nullopt;
  for (std::size_t size = std::max<std::size_t>(kept.size() / 2, 1);; size /= 2) {
    for (std::size_t from = 0; from < kept.size() && !over() && tries < most_tries;) {
      Tags fewer = kept;
      const auto begin = fewer.begin() + static_cast<std::ptrdiff_t>(from);
      fewer.erase(begin, begin + static_cast<std::ptrdiff_t>(std::min(size, kept.size() - from)));
      ++tries;
      if (impossible(problem, fewer, each)) {
        kept = std::move(fewer);
      } else {
        from += size;
      }
    }
    if (size <= 1 || over() || tries >= most_tries) return kept;
  }
}

}  // namespace coatday::solver
