#include "solver/learn/cliques.h"

#include <algorithm>
#include <numeric>
#include <set>

namespace coatday::solver::learn {
namespace {

constexpr std::size_t most = 300;          // tasks in all sets together
constexpr std::size_t effort = 2'000'000;  // seeds times tasks squared

class Finder {
 public:
  Finder(const Trail& trail, const std::vector<Use>& uses, const std::vector<Resource>& resources) : resources_(resources) {
    for (const Use& use : uses) {
      if (!use.conditions.empty() || use.endings.size() != 1 || use.endings[0].x != use.begin || use.endings[0].absent >= 0) continue;
      const Time length = shortest(trail, use);
      if (length <= 0) continue;
      tasks_.push_back({use.begin, length});
      amounts_.emplace_back(resources.size(), 0);
      for (const Demand& d : use.demands) amounts_.back()[at(d.resource)] = d.amount;
    }
  }

  Cliques run() {
    find_clashes();
    std::set<std::vector<std::size_t>> found;
    const std::size_t step = 1 + tasks_.size() * tasks_.size() * tasks_.size() / effort;
    for (std::size_t seed = 0; seed < tasks_.size(); seed += step) found.insert(grow(seed));
    Cliques result;
    for (const auto& members : found) {
      if (members.size() < 3) continue;
      result.emplace_back();
      for (const std::size_t k : members) result.back().push_back(tasks_[k]);
    }
    const auto length = [](const std::vector<Task>& tasks) {
      return std::accumulate(tasks.begin(), tasks.end(), 0L, [](long sum, const Task& task) { return sum + task.length; });
    };
    std::stable_sort(result.begin(), result.end(), [&](const auto& a, const auto& b) { return length(a) > length(b); });
    std::size_t size = 0;
    std::erase_if(result, [&](const std::vector<Task>& tasks) { return (size += tasks.size()) > most; });
    return result;
  }

 private:
  static Time shortest(const Trail& trail, const Use& use) {
    const Mapping& f = use.endings[0].f;
    if (f.constant()) return f.lag();
    Time result = never;
    for (Time t = trail.low(use.begin); t <= trail.high(use.begin); ++t) result = std::min(result, f.at(t) - t);
    return result;
  }

  [[nodiscard]] bool clash(std::size_t a, std::size_t b) const {
    for (std::size_t r = 0; r < resources_.size(); ++r) {
      if (amounts_[a][r] + amounts_[b][r] > resources_[r].capacity) return true;
    }
    return false;
  }

  void find_clashes() {
    for (std::size_t a = 0; a < tasks_.size(); ++a) {
      clashes_.emplace_back();
      for (std::size_t b = 0; b < tasks_.size(); ++b) clashes_.back().push_back(a != b && clash(a, b) ? 1 : 0);
    }
  }

  // The seed, then again and again whoever leaves the longest work that may still come in.
  [[nodiscard]] std::vector<std::size_t> grow(std::size_t seed) const {
    std::vector<std::size_t> members{seed}, candidates;
    const auto keep = [&](std::size_t member) { std::erase_if(candidates, [&](std::size_t k) { return clashes_[member][k] == 0; }); };
    for (std::size_t k = 0; k < tasks_.size(); ++k) candidates.push_back(k);
    keep(seed);
    while (!candidates.empty()) {
      std::size_t next = 0;
      long most_left = -1;
      for (const std::size_t c : candidates) {
        long left = tasks_[c].length;
        for (const std::size_t k : candidates) left += clashes_[c][k] != 0 ? tasks_[k].length : 0;
        if (left <= most_left) continue;
        most_left = left;
        next = c;
      }
      members.push_back(next);
      keep(next);
    }
    std::sort(members.begin(), members.end());
    return members;
  }

  const std::vector<Resource>& resources_;
  std::vector<Task> tasks_;
  std::vector<std::vector<int>> amounts_;   ///< by task and resource
  std::vector<std::vector<char>> clashes_;  ///< by task and task
};

}  // namespace

Cliques find_cliques(const Trail& trail, const std::vector<Use>& uses, const std::vector<Resource>& resources) {
  return Finder(trail, uses, resources).run();
}

}  // namespace coatday::solver::learn
