#include "solver/exact/neighbours.h"

#include <algorithm>
#include <map>

namespace coatday::solver {
namespace {

constexpr int closest = 3;  // each activity keeps its order with so many that end before it, on each resource

// The activities that take part, by start.
std::vector<int> by_start(const Schedule& schedule) {
  std::vector<int> result;
  for (int a = 0; a < static_cast<int>(schedule.activities.size()); ++a) {
    if (schedule.activities[at(a)].present) result.push_back(a);
  }
  std::sort(result.begin(), result.end(), [&](int a, int b) {
    const Time one = schedule.activities[at(a)].start, other = schedule.activities[at(b)].start;
    return one != other ? one < other : a < b;
  });
  return result;
}

}  // namespace

Neighbours::Neighbours(const Network& network, Random& random) : network_(network), random_(random) {}

Neighbourhood Neighbours::choose(const Schedule& schedule, int size) {
  const double kind = random_.unit();
  const Free free = kind < 0.5 ? by_time(schedule, size) : kind < 0.8 ? by_lags(schedule, size) : by_resource(schedule, size);
  Neighbourhood result;
  keep_branches(schedule, free, result);
  keep_orders(schedule, free, result);
  return result;
}

Neighbourhood Neighbours::in_turn() const {
  std::map<int, std::vector<int>> groups;
  for (int a = 0; a < network_.size; ++a) {
    if (!network_.activity(a).optional && !network_.demands[a].empty()) groups[network_.stage[at(a)]].push_back(a);
  }
  std::erase_if(groups, [](const auto& group) { return group.second.size() == 1; });
  Neighbourhood result;
  const std::vector<int>* before = nullptr;
  for (const auto& [stage, group] : groups) {
    for (std::size_t i = 0; before != nullptr && i < before->size(); ++i) {
      for (const int b : group) result.orders.emplace_back((*before)[i], b);
    }
    before = &group;
  }
  return result;
}

Neighbours::Free Neighbours::by_time(const Schedule& schedule, int size) {
  const std::vector<int> order = by_start(schedule);
  Free free(at(network_.size), 0);
  const std::size_t count = std::min(order.size(), at(size));
  const std::size_t first = random_.below(order.size() - count + 1);
  for (std::size_t i = first; i < first + count; ++i) free[at(order[i])] = 1;
  return free;
}

// Activities that lags tie to some activity, nearest first, and activities that run beside them.
Neighbours::Free Neighbours::by_lags(const Schedule& schedule, int size) {
  Free free(at(network_.size), 0);
  std::vector<int> reached{static_cast<int>(random_.below(at(network_.size)))};
  free[at(reached.front())] = 1;
  const auto reach = [&](int a) {
    if (static_cast<int>(reached.size()) >= size || free[at(a)] != 0 || random_.chance(0.2)) return;
    free[at(a)] = 1;
    reached.push_back(a);
  };
  for (std::size_t i = 0; i < reached.size() && static_cast<int>(reached.size()) < size; ++i) {
    const int a = reached[i];
    for (const int lag : network_.max_out[a]) reach(network_.max_lag(lag).to);
    for (const int lag : network_.max_in[a]) reach(network_.max_lag(lag).from.activity);
    const Assignment& run = schedule.activities[at(a)];
    for (const Demand& demand : network_.demands[a]) {
      for (const int b : network_.users[demand.resource]) {
        const Assignment& other = schedule.activities[at(b)];
        if (run.present && other.present && other.start < run.end && run.start < other.end && random_.chance(0.5)) reach(b);
      }
    }
    for (const int lag : network_.min_out[a]) reach(network_.min_lag(lag).to);
    for (const int lag : network_.min_in[a]) reach(network_.min_lag(lag).from.activity);
  }
  return free;
}

// Users of one resource within a stretch of time.
Neighbours::Free Neighbours::by_resource(const Schedule& schedule, int size) {
  if (network_.problem.resources.empty()) return by_time(schedule, size);
  const int resource = static_cast<int>(random_.below(network_.problem.resources.size()));
  std::vector<int> users;
  for (const int a : by_start(schedule)) {
    const auto& demands = network_.demands[a];
    if (std::any_of(demands.begin(), demands.end(), [&](const Demand& d) { return d.resource == resource; })) users.push_back(a);
  }
  Free free(at(network_.size), 0);
  const std::size_t count = std::min(users.size(), at(size));
  const std::size_t first = random_.below(users.size() - count + 1);
  for (std::size_t i = first; i < first + count; ++i) free[at(users[i])] = 1;
  return free;
}

void Neighbours::keep_branches(const Schedule& schedule, const Free& free, Neighbourhood& result) const {
  for (int f = 0; f < static_cast<int>(network_.problem.alternatives.size()); ++f) {
    const auto branches = network_.branches_of(f);
    const bool kept = std::none_of(branches.begin(), branches.end(), [&](const Branch& branch) {
      return std::any_of(branch.begin(), branch.end(), [&](int a) { return free[at(a)] != 0; });
    });
    if (kept) result.branches.emplace_back(f, taken_branch(network_.problem.alternatives[at(f)], schedule));
  }
}

void Neighbours::keep_orders(const Schedule& schedule, const Free& free, Neighbourhood& result) const {
  const auto run = [&](int a) -> const Assignment& { return schedule.activities[at(a)]; };
  for (int r = 0; r < static_cast<int>(network_.problem.resources.size()); ++r) {
    std::vector<int> by_end;
    for (const int a : network_.users[r]) {
      if (free[at(a)] == 0 && run(a).present && run(a).start < run(a).end) by_end.push_back(a);
    }
    std::vector<int> by_begin = by_end;
    std::sort(by_end.begin(), by_end.end(), [&](int a, int b) { return run(a).end != run(b).end ? run(a).end < run(b).end : a < b; });
    std::sort(by_begin.begin(), by_begin.end(),
              [&](int a, int b) { return run(a).start != run(b).start ? run(a).start < run(b).start : a < b; });
    std::size_t ended = 0;
    for (const int b : by_begin) {
      while (ended < by_end.size() && run(by_end[ended]).end <= run(b).start) ++ended;
      for (std::size_t i = ended; i > 0 && i + closest > ended; --i) result.orders.emplace_back(by_end[i - 1], b);
    }
  }
  std::sort(result.orders.begin(), result.orders.end());
  result.orders.erase(std::unique(result.orders.begin(), result.orders.end()), result.orders.end());
}

}  // namespace coatday::solver
