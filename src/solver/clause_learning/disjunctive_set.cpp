#include "solver/clause_learning/disjunctive_set.h"

#include <algorithm>
#include <numeric>
#include <set>

namespace coatday::solver::clause_learning {
namespace {

constexpr std::size_t most_tasks = 300;    // tasks in all sets together
constexpr std::size_t effort = 2'000'000;  // seeds times tasks squared

// Starts with the seed, then adds again and again the task that leaves the most work among the remaining candidates.
std::vector<std::size_t> grow(const DisjunctiveSet& disjunctive, std::size_t seed) {
  std::vector<std::size_t> members{seed}, candidates;
  for (std::size_t k = 0; k < disjunctive.tasks.size(); ++k) {
    if (disjunctive.disjoint[seed][k] != 0) candidates.push_back(k);
  }
  std::vector<long> left(disjunctive.tasks.size(), 0);  // by candidate: its length and that of the candidates beside it
  for (const std::size_t c : candidates) {
    left[c] = disjunctive.tasks[c].length;
    for (const std::size_t k : candidates) left[c] += disjunctive.disjoint[c][k] != 0 ? disjunctive.tasks[k].length : 0;
  }
  while (!candidates.empty()) {
    const std::size_t next = *std::max_element(candidates.begin(), candidates.end(), [&](auto a, auto b) { return left[a] < left[b]; });
    members.push_back(next);
    const auto gone =
        std::stable_partition(candidates.begin(), candidates.end(), [&](auto k) { return disjunctive.disjoint[next][k] != 0; });
    for (auto k = candidates.begin(); k != gone; ++k) {
      for (auto out = gone; out != candidates.end(); ++out)
        left[*k] -= disjunctive.disjoint[*k][*out] != 0 ? disjunctive.tasks[*out].length : 0;
    }
    candidates.erase(gone, candidates.end());
  }
  std::sort(members.begin(), members.end());
  return members;
}

}  // namespace

std::optional<Time> shortest(const Trail& trail, const Use& use) {
  if (use.endings.size() != 1 || use.endings[0].x != use.begin || use.endings[0].absent >= 0) return std::nullopt;
  const Mapping& f = use.endings[0].f;
  if (f.constant()) return f.lag();
  Time result = unreachable;
  for (Time t = trail.low(use.begin); t <= trail.high(use.begin); ++t) result = std::min(result, f.at(t) - t);
  return result;
}

DisjunctiveSet find_disjunctive_set(const Trail& trail, const std::vector<Use>& uses, const std::vector<Resource>& resources) {
  DisjunctiveSet result;
  std::vector<std::vector<int>> amounts;  // by task and resource
  for (const Use& use : uses) {
    const auto length = shortest(trail, use);
    if (!use.conditions.empty() || !length || *length <= 0) continue;
    result.tasks.push_back({use.begin, *length});
    result.ends.push_back(use.endings[0].f);
    amounts.emplace_back(resources.size(), 0);
    for (const Demand& d : use.demands) amounts.back()[at(d.resource)] = d.amount;
  }
  const auto too_much_together = [&](std::size_t a, std::size_t b) {
    for (std::size_t r = 0; r < resources.size(); ++r) {
      if (amounts[a][r] + amounts[b][r] > resources[r].capacity) return true;
    }
    return false;
  };
  const std::size_t count = result.tasks.size();
  result.disjoint.assign(count, std::vector<char>(count, 0));
  for (std::size_t a = 0; a < count; ++a) {
    for (std::size_t b = 0; b < a; ++b) result.disjoint[a][b] = result.disjoint[b][a] = too_much_together(a, b) ? 1 : 0;
  }
  return result;
}

std::vector<std::vector<Task>> find_cliques(const DisjunctiveSet& disjunctive) {
  const std::size_t count = disjunctive.tasks.size();
  std::set<std::vector<std::size_t>> found;
  const std::size_t step = 1 + count * count * count / effort;
  for (std::size_t seed = 0; seed < count; seed += step) found.insert(grow(disjunctive, seed));
  std::vector<std::vector<Task>> result;
  for (const auto& members : found) {
    if (members.size() < 3) continue;
    result.emplace_back();
    for (const std::size_t k : members) result.back().push_back(disjunctive.tasks[k]);
  }
  const auto length = [](const std::vector<Task>& tasks) {
    return std::accumulate(tasks.begin(), tasks.end(), 0L, [](long sum, const Task& task) { return sum + task.length; });
  };
  std::stable_sort(result.begin(), result.end(), [&](const auto& a, const auto& b) { return length(a) > length(b); });
  std::size_t size = 0;
  std::erase_if(result, [&](const std::vector<Task>& tasks) { return (size += tasks.size()) > most_tasks; });
  return result;
}

}  // namespace coatday::solver::clause_learning
