#include "tests/solver/any_problem.h"

#include <algorithm>

namespace coatday::solver::test {
namespace {

class Maker {
 public:
  Maker(const Draw& draw, Reach reach) : draw_(draw), all_(reach == Reach::all) {}

  Problem make() {
    p_.horizon = 4 + upto(6);
    p_.sharing_gap = upto(2);
    for (int r = 0; r < 1 + upto(1); ++r) p_.resources.push_back({upto(3), 100 + r, 0});
    if (all_) laid_out();
    count_ = 1 + upto(4);
    for (int i = 0; i < count_; ++i) p_.activities.push_back(activity(i));
    if (count_ > 1) {
      for (int k = upto(5); k > 0; --k) minimum(200 + k);
      for (int k = upto(3); k > 0; --k) maximum(300 + k);
    }
    for (int k = upto(2); k > 0; --k) hold(500 + k);
    for (int k = upto(2); k > 0; --k) exclusion(600 + k);
    for (int k = upto(3); k > 0; --k) goal();
    if (all_) alternatives();
    return std::move(p_);
  }

 private:
  int upto(int most) { return draw_(most); }
  bool one_in(int n) { return upto(n - 1) == n - 1; }  // a draw of 0 is the plain case
  int anyone() { return upto(count_ - 1); }
  int other_than(int a) {
    const int b = upto(count_ - 2);
    return b < a ? b : b + 1;
  }
  Point point(int a) { return {a, one_in(2) ? Edge::end : Edge::start}; }

  Function rising(Time least, Time most) {
    if (one_in(8)) return nullptr;
    if (!one_in(2)) return shift(least + upto(most - least));
    const Time first = -upto(2);
    std::vector<Time> values;
    for (Time t = first; t <= p_.horizon - upto(1); ++t) {
      const Time value = t + least + upto(most - least);
      values.push_back(values.empty() ? value : std::max(values.back(), value));
    }
    return table(first, std::move(values));
  }

  Intervals calendar() {
    Intervals result;
    Time from = one_in(6) ? -upto(3) : upto(3);
    for (int k = one_in(10) ? 0 : 1 + upto(2); k > 0 && from <= p_.horizon; --k) {
      const Time length = 1 + upto(5);
      result.push_back({from, from + length});
      from += length + 1 + upto(2);
    }
    return result;
  }

  std::vector<Demand> demands(int least) {
    std::vector<Demand> result;
    for (int k = least + upto(2 - least); k > 0; --k)
      result.push_back({upto(all_ ? laid_out_ - 1 : static_cast<int>(p_.resources.size()) - 1), upto(2)});
    return result;
  }

  void laid_out() {
    laid_out_ = static_cast<int>(p_.resources.size());
    const int segment = 1 + upto(3);
    p_.resources.push_back({segment * (1 + upto(1)), 110, segment});
  }

  /// Of the activities that may stand in one, each in a branch or two of one alternative at most; a branch may stay empty.
  void alternatives() {
    std::vector<Alternative> alternatives(static_cast<std::size_t>(upto(2)));
    for (Alternative& alternative : alternatives) {
      alternative.branches.resize(static_cast<std::size_t>(1 + upto(2)));
      alternative.tag = 700;
    }
    for (int a = 0; a < count_ && !alternatives.empty(); ++a) {
      if (one_in(3) || stands_alone(a)) continue;
      Alternative& alternative = alternatives[static_cast<std::size_t>(upto(static_cast<int>(alternatives.size()) - 1))];
      const auto branch = [&] { return static_cast<std::size_t>(upto(static_cast<int>(alternative.branches.size()) - 1)); };
      const std::size_t first = branch(), other = one_in(4) ? branch() : first;
      alternative.branches[first].push_back(a);
      if (other != first) alternative.branches[other].push_back(a);
    }
    p_.alternatives = std::move(alternatives);
  }

  [[nodiscard]] bool stands_alone(int a) const {
    return p_.activities[static_cast<std::size_t>(a)].optional ||
           std::any_of(p_.goals.begin(), p_.goals.end(), [a](const Goal& goal) { return goal.activity == a; }) ||
           std::any_of(p_.maximum_lags.begin(), p_.maximum_lags.end(), [a](const MaximumLag& lag) { return lag.remedy == a; });
  }

  Activity activity(int i) {
    Activity a;
    a.starts = calendar();
    a.end = rising(0, 3);
    a.demands = demands(0);
    a.tag = i;
    if (one_in(3)) {
      a.family = upto(1);
      if (!one_in(4)) a.end_shared = rising(0, 3);
      if (one_in(2)) a.starts_shared = calendar();
    }
    a.optional = one_in(5);
    return a;
  }

  void minimum(Tag tag) {
    const int from = anyone();
    p_.minimum_lags.push_back({point(from), other_than(from), rising(-3, 4), tag});
  }

  void maximum(Tag tag) {
    const int from = anyone(), to = other_than(from);
    std::optional<int> remedy;
    if (one_in(2)) remedy = anyone();
    if (remedy == from || remedy == to) remedy.reset();
    p_.maximum_lags.push_back({point(from), to, rising(-2, 5), tag, remedy});
  }

  void hold(Tag tag) {
    Hold h;
    h.first = anyone();
    if (count_ > 1 && !one_in(3)) h.until = {other_than(h.first)};
    if (one_in(2)) {
      h.limit_from = point(anyone());
      h.limit = shift(upto(5) - 1);
      if (one_in(2)) h.limit = rising(0, 5);
    }
    h.choices = demands(1);
    if (all_ && !one_in(3)) h.choices.push_back({laid_out_, 1 + upto(p_.resources.back().capacity)});
    if (all_ && one_in(2)) h.choices.erase(h.choices.begin());
    h.tag = tag;
    p_.holds.push_back(std::move(h));
  }

  void exclusion(Tag tag) {
    Exclusion e;
    e.tag = tag;
    for (auto* side : {&e.left, &e.right}) {
      for (int k = 1 + upto(1); k > 0; --k) side->push_back({anyone(), upto(2), one_in(2) ? rising(-1, 4) : nullptr});
    }
    p_.exclusions.push_back(std::move(e));
  }

  void goal() {
    const Time due = one_in(2) ? unreachable : upto(p_.horizon) - 1;
    p_.goals.push_back({anyone(), due, upto(4) / 2.0, -1});
  }

  const Draw& draw_;
  bool all_;
  int count_ = 0;
  int laid_out_ = 0;  // the resource
  Problem p_;
};

}  // namespace

Problem any_problem(const Draw& draw, Reach reach) { return Maker(draw, reach).make(); }

double size_of(const Problem& problem) {
  double result = 1;
  for (const Activity& a : problem.activities) {
    double options = a.optional || !problem.alternatives.empty() ? 1 : 0;
    for (const Interval& i : a.starts) options += i.end - i.begin;
    if (a.family >= 0 && a.end_shared) {
      for (const Interval& i : a.starts_shared.empty() ? a.starts : a.starts_shared) options += i.end - i.begin;
    }
    result *= std::max(options, 1.0);
  }
  return result;
}

}  // namespace coatday::solver::test
