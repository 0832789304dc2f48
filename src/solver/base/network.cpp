#include "solver/base/network.h"

#include <algorithm>
#include <map>
#include <queue>

#include "solver/base/stages.h"

namespace coatday::solver {

using Entries = std::vector<GroupedLists<int>::Entry>;

Network::Network(const Problem& given) : problem(given), size(static_cast<int>(given.activities.size())) {
  sort_lags();
  sort_holds();
  sort_resources();
  sort_families();
  sort_branches();
  find_order();
  find_kinds();
  stage = stages(*this);
}

void Network::sort_lags() {
  Entries in, out;
  for (int i = 0; i < static_cast<int>(problem.minimum_lags.size()); ++i) {
    in.push_back({min_lag(i).to, i});
    out.push_back({min_lag(i).from.activity, i});
  }
  min_in = {size, in};
  min_out = {size, out};

  Entries remedies;
  in.clear();
  out.clear();
  for (int i = 0; i < static_cast<int>(problem.maximum_lags.size()); ++i) {
    const MaximumLag& lag = max_lag(i);
    force.push_back(!lag.remedy ? Force::hard : activity(*lag.remedy).optional ? Force::soft : Force::none);
    if (force.back() == Force::soft) remedies.push_back({*lag.remedy, i});
    in.push_back({lag.to, i});
    out.push_back({lag.from.activity, i});
  }
  max_in = {size, in};
  max_out = {size, out};
  remedied = {size, remedies};
}

void Network::sort_holds() {
  Entries touching;
  for (int i = 0; i < static_cast<int>(problem.holds.size()); ++i) {
    std::vector<int> ends{hold(i).first};
    ends.insert(ends.end(), hold(i).until.begin(), hold(i).until.end());
    if (hold(i).limit) ends.push_back(hold(i).limit_from.activity);
    std::sort(ends.begin(), ends.end());
    ends.erase(std::unique(ends.begin(), ends.end()), ends.end());
    for (const int a : ends) touching.push_back({a, i});
  }
  holds = {size, touching};
}

void Network::sort_resources() {
  Entries activities, holding;
  std::vector<GroupedLists<Demand>::Entry> totals;
  for (int a = 0; a < size; ++a) {
    const std::size_t first = totals.size();
    for (const Demand& demand : activity(a).demands) {
      const auto same = std::find_if(totals.begin() + static_cast<std::ptrdiff_t>(first), totals.end(),
                                     [&](const GroupedLists<Demand>::Entry& e) { return e.item.resource == demand.resource; });
      if (same != totals.end()) {
        same->item.amount += demand.amount;
      } else {
        totals.push_back({a, demand});
        activities.push_back({demand.resource, a});
      }
    }
  }
  for (int h = 0; h < static_cast<int>(problem.holds.size()); ++h) {
    for (const Demand& choice : hold(h).choices) holding.push_back({choice.resource, h});
  }
  const int resources = static_cast<int>(problem.resources.size());
  users = {resources, activities};
  holders = {resources, holding};
  demands = {size, totals};
}

void Network::sort_families() {
  int count = 0;
  Entries members;
  for (int a = 0; a < size; ++a) {
    if (activity(a).family < 0) continue;
    members.push_back({activity(a).family, a});
    count = std::max(count, activity(a).family + 1);
  }
  families = {count, members};

  std::vector<GroupedLists<Carried>::Entry> spans;
  for (int e = 0; e < static_cast<int>(problem.exclusions.size()); ++e) {
    const Exclusion& exclusion = problem.exclusions[at(e)];
    for (const Span& span : exclusion.left) spans.push_back({span.activity, {e, false, &span}});
    for (const Span& span : exclusion.right) spans.push_back({span.activity, {e, true, &span}});
  }
  carried = {size, spans};
}

void Network::find_kinds() {
  std::map<std::vector<int>, int> known;
  for (int a = 0; a < size; ++a) {
    const Intervals& starts = activity(a).starts;
    const Time first = starts.empty() ? 0 : starts.front().begin;
    std::vector<int> signs{activity(a).family, end_of(activity(a), first, false) - first};
    for (const Demand& demand : demands[a]) signs.insert(signs.end(), {demand.resource, demand.amount});
    for (const Carried& c : carried[a]) signs.insert(signs.end(), {-2, c.exclusion, c.right ? 1 : 0});
    for (const int h : holds[a]) {
      if (hold(h).first != a) continue;
      for (const Demand& choice : hold(h).choices) signs.insert(signs.end(), {-3, choice.resource, choice.amount});
    }
    kind.push_back(known.try_emplace(std::move(signs), kinds).first->second);
    kinds = static_cast<int>(known.size());
  }
}

void Network::sort_branches() {
  alternative.assign(at(size), -1);
  for (int f = 0; f < static_cast<int>(problem.alternatives.size()); ++f) {
    const auto& all = problem.alternatives[at(f)].branches;
    first_branch.push_back(static_cast<int>(branches.size()));
    for (const std::vector<int>& activities : all) {
      branches.push_back(activities);
      std::sort(branches.back().begin(), branches.back().end());
    }
    for (const std::vector<int>& activities : all) {
      for (const int a : activities) {
        const bool in_all = std::all_of(branches.end() - static_cast<std::ptrdiff_t>(all.size()), branches.end(),
                                        [a](const Branch& w) { return stands_in(a, w); });
        if (!in_all) alternative[at(a)] = f;
      }
    }
  }
  first_branch.push_back(static_cast<int>(branches.size()));
}

std::span<const Branch> Network::branches_of(int f) const {
  const auto first = at(first_branch[at(f)]);
  return std::span(branches).subspan(first, at(first_branch[at(f) + 1]) - first);
}

bool Network::implies(int i, int other) const {
  if (certain(other)) return true;
  const int f = alternative[at(i)];
  if (f < 0 || f != alternative[at(other)]) return false;
  const std::span<const Branch> all = branches_of(f);
  return std::all_of(all.begin(), all.end(), [&](const Branch& branch) { return !stands_in(i, branch) || stands_in(other, branch); });
}

bool stands_in(int activity, const Branch& branch) { return std::binary_search(branch.begin(), branch.end(), activity); }

// Kahn's algorithm. Where lags form a cycle, the lowest number goes first.
void Network::find_order() {
  rank.assign(at(size), -1);
  std::vector<int> waiting(at(size), 0);
  std::queue<int> next;
  int required = 0;
  for (int a = 0; a < size; ++a) {
    if (activity(a).optional) continue;
    ++required;
    for (const int lag : min_in[a]) waiting[at(a)] += activity(min_lag(lag).from.activity).optional ? 0 : 1;
    if (waiting[at(a)] == 0) next.push(a);
  }
  int scan = 0;
  while (static_cast<int>(order.size()) < required) {
    if (next.empty()) {
      while (activity(scan).optional || rank[at(scan)] >= 0) ++scan;
      next.push(scan);
    }
    const int a = next.front();
    next.pop();
    if (rank[at(a)] >= 0) continue;
    rank[at(a)] = static_cast<int>(order.size());
    order.push_back(a);
    for (const int lag : min_out[a]) {
      const int to = min_lag(lag).to;
      if (!activity(to).optional && --waiting[at(to)] == 0) next.push(to);
    }
  }
}

bool Network::precedence(const MinimumLag& lag) const {
  const int from = rank[at(lag.from.activity)];
  return from >= 0 && from < rank[at(lag.to)];
}

int taken_branch(const Alternative& alternative, const Schedule& schedule) {
  const auto present = [&](int a) { return schedule.activities[at(a)].present; };
  int taken = -1;
  std::size_t most = 0;
  for (std::size_t w = 0; w < alternative.branches.size(); ++w) {
    const Branch& branch = alternative.branches[w];
    if (!std::all_of(branch.begin(), branch.end(), present) || (taken >= 0 && branch.size() <= most)) continue;
    taken = static_cast<int>(w);
    most = branch.size();
  }
  return taken;
}

bool may_share(const Activity& a) { return a.family >= 0 && a.end_shared; }

const Intervals& starts_of(const Activity& a, bool shared) { return shared && !a.starts_shared.empty() ? a.starts_shared : a.starts; }

Time value_of(const Function& f, Time t) { return f ? f->at(t) : t; }

Time latest_of(const Function& f, Time value, Time low, Time high) {
  if (high < low) return low - 1;
  return f ? f->latest(value, low, high) : std::clamp(value, low - 1, high);
}

Time end_of(const Activity& a, Time start, bool shared) { return value_of(shared ? a.end_shared : a.end, start); }

Time value_of(const Activity& a, Edge edge, Time start, bool shared) { return edge == Edge::start ? start : end_of(a, start, shared); }

Time latest_of(const Activity& a, Edge edge, bool shared, Time value, Time low, Time high) {
  if (edge == Edge::start) return high < low ? low - 1 : std::clamp(value, low - 1, high);
  return latest_of(shared ? a.end_shared : a.end, value, low, high);
}

}  // namespace coatday::solver
