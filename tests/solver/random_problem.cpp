#include "tests/solver/random_problem.h"

#include <algorithm>
#include <random>

namespace coatday::solver::test {
namespace {

constexpr Time short_horizon = Size{}.horizon;

class Maker {
 public:
  Maker(const Features& features, std::uint64_t seed, const Size& size) : f_(features), random_(seed), size_(size) {}

  Problem make() {
    p_.horizon = size_.horizon;
    p_.sharing_gap = upto(2);
    for (int r = 0; r < 2; ++r) p_.resources.push_back({1 + upto(1), 100 + r, 0});
    const int count = size_.activities > 0 ? size_.activities : 2 + upto(f_.alternatives ? 0 : f_.families || f_.remedies ? 1 : 2);
    for (int i = 0; i < count; ++i) p_.activities.push_back(activity(i));
    for (int to = 1; to < count; ++to) lags(upto(to - 1), to);
    if (f_.remedies) remedy(count);
    if (f_.minimum && one_in(4)) p_.minimum_lags.push_back({{count - 1, edge()}, 0, shift(-(1 + upto(8))), 299});  // closes a cycle
    if (f_.alternatives) alternative(count);
    const int all = f_.alternatives ? static_cast<int>(p_.activities.size()) : count;
    if (f_.holds) holds(all);
    if (f_.segments) holds_in_segments(all);
    if (f_.exclusions) exclude(all);
    for (int i = 0; i < count; ++i) {
      if (i == count - 1 || one_in(2)) p_.goals.push_back({i, f_.dues ? upto(size_.horizon) : unreachable, 1.0 + upto(2), -1});
    }
    return std::move(p_);
  }

 private:
  int upto(int most) { return static_cast<int>(random_() % static_cast<std::uint64_t>(most + 1)); }
  bool one_in(int n) { return upto(n - 1) == 0; }
  Edge edge() { return one_in(2) ? Edge::end : Edge::start; }

  Function rising(Time least, Time most) {
    if (!f_.tables || one_in(2)) return shift(least + upto(most - least));
    std::vector<Time> values;
    for (Time t = 0; t <= size_.horizon; ++t) {
      const Time value = t + least + upto(most - least);
      values.push_back(values.empty() ? value : std::max(values.back(), value));
    }
    return table(0, std::move(values));
  }

  Intervals calendar() {
    if (!f_.calendars || one_in(4)) return {{0, size_.horizon + 1}};
    const Time begin = upto(4), end = begin + 1 + upto(3), again = end + 1 + upto(2);
    if (one_in(3)) return {{begin, end}};
    Intervals result{{begin, end}, {again, again + 1 + upto(4)}};
    while (size_.horizon > short_horizon && result.back().end + 3 < size_.horizon) {
      const Time next = result.back().end + 1 + upto(2);
      result.push_back({next, next + 1 + upto(4)});
    }
    return result;
  }

  Activity activity(int i) {
    Activity a;
    a.starts = calendar();
    a.tag = i;
    if (!one_in(6)) a.end = rising(0, 3);
    if (f_.resources) {
      if (!one_in(4)) a.demands.push_back({upto(1), 1});
      if (one_in(4)) a.demands.push_back({upto(1), 1});
    }
    if (f_.families && !one_in(3)) {
      a.family = upto(1);
      a.end_shared = rising(0, 2);
      if (f_.calendars && one_in(2)) a.starts_shared = calendar();
    }
    return a;
  }

  void lags(int from, int to) {
    if (f_.minimum && !one_in(4)) p_.minimum_lags.push_back({{from, edge()}, to, one_in(5) ? nullptr : rising(0, 3), 200 + to});
    if (f_.maximum && one_in(2)) p_.maximum_lags.push_back({{from, edge()}, to, rising(0, 5), 300 + to, std::nullopt});
  }

  void remedy(int count) {
    Activity a = activity(count);
    a.optional = true;
    a.family = -1;
    a.end_shared = nullptr;
    p_.activities.push_back(a);
    remedy_ = count;
    const int to = 1 + upto(count - 2), from = upto(to - 1);
    p_.maximum_lags.push_back({{from, edge()}, to, rising(0, 3), 400, count});
    if (one_in(4)) p_.maximum_lags.push_back({{upto(to - 1), edge()}, to, rising(0, 4), 401, count});
    p_.minimum_lags.push_back({{from, Edge::end}, count, rising(0, 1), 402});
    p_.minimum_lags.push_back({{count, Edge::end}, to, rising(0, 1), 403});
    if (one_in(3)) p_.maximum_lags.push_back({{count, Edge::end}, to, rising(0, 3), 404, std::nullopt});
  }

  // Two branches, or three, of one or two activities that stand between the first and the last of the others, or beside them.
  void alternative(int count) {
    const int first = static_cast<int>(p_.activities.size()), more = 2 + upto(1);
    std::vector<std::vector<int>> branches(static_cast<std::size_t>(2 + (one_in(3) ? 1 : 0)));
    for (int a = first; a < first + more; ++a) {
      p_.activities.push_back(activity(a));
      if (one_in(6)) p_.activities.back().demands = {{0, 2}};
      if (!one_in(4)) ties({upto(count - 1), edge()}, a);
      if (!one_in(4)) ties({a, edge()}, upto(count - 1));
      if (a > first && one_in(2)) ties({a - 1, edge()}, a);
      const std::size_t in = static_cast<std::size_t>(a - first) % branches.size();
      branches[in].push_back(a);
      if (one_in(4)) branches[(in + 1) % branches.size()].push_back(a);
    }
    p_.alternatives.push_back({std::move(branches), 700});
  }

  void ties(Point from, int to) {
    if (!one_in(4)) p_.minimum_lags.push_back({from, to, one_in(5) ? nullptr : rising(0, 4), 710 + to});
    if (one_in(4)) p_.maximum_lags.push_back({from, to, rising(0, 5), 720 + to, std::nullopt});
    if (f_.remedies && one_in(4)) p_.maximum_lags.push_back({from, to, rising(0, 2), 730 + to, remedy_});
  }

  void holds(int count) {
    for (int h = 0; h < 1 + upto(1); ++h) {
      Hold hold;
      hold.first = upto(static_cast<int>(p_.activities.size()) - 1);
      hold.tag = 500 + h;
      if (!one_in(3)) {
        const int until = upto(count - 1);
        if (until != hold.first) hold.until.push_back(until);
        if (f_.alternatives && until > 0 && until - 1 != hold.first) hold.until.push_back(until - 1);
      }
      if (hold.until.empty() || one_in(2)) {
        hold.limit_from = {one_in(4) ? upto(count - 1) : hold.first, edge()};
        hold.limit = rising(0, 5);
      }
      hold.choices.push_back({upto(1), 1 + (one_in(5) ? 1 : 0)});
      if (one_in(2)) hold.choices.push_back({upto(1), 1});
      p_.holds.push_back(std::move(hold));
    }
  }

  void holds_in_segments(int count) {
    const int segment = 2 + upto(2);
    p_.resources.push_back({segment * (1 + upto(1)), 110, segment});
    for (int h = 0; h < 2 + upto(1); ++h) {
      const int first = upto(count - 1);
      p_.holds.push_back({first, {}, {first, edge()}, rising(1, 5), {{2, 1 + upto(segment)}}, 510 + h});
    }
  }

  void exclude(int count) {
    Exclusion exclusion;
    exclusion.tag = 600;
    for (int i = 0; i < count; ++i) {
      const Span span{i, upto(2), one_in(2) ? nullptr : rising(0, 4)};
      if (one_in(2)) exclusion.left.push_back(span);
      if (one_in(2)) exclusion.right.push_back(span);
    }
    p_.exclusions.push_back(std::move(exclusion));
  }

  Features f_;
  std::mt19937_64 random_;
  Size size_;
  Problem p_;
  int remedy_ = -1;
};

}  // namespace

Features features(unsigned bits) {
  const auto bit = [bits](unsigned i) { return ((bits >> i) & 1U) != 0; };
  return {bit(0), bit(1), bit(2), bit(3), bit(4), bit(5), bit(6), bit(7), bit(8), bit(9), bit(10), bit(11)};
}

Problem random_problem(const Features& features, std::uint64_t seed, const Size& size) { return Maker(features, seed, size).make(); }

}  // namespace coatday::solver::test
