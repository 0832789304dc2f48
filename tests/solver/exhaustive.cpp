#include "tests/solver/exhaustive.h"

#include <algorithm>

namespace coatday::solver::test {
namespace {

class Search {
 public:
  explicit Search(const Problem& problem) : p_(problem), n_(problem.activities.size()) {
    first_ = 0;
    for (const Activity& a : p_.activities) {
      if (!a.starts.empty()) first_ = std::min(first_, a.starts.front().begin);
    }
    s_.activities.resize(n_);
    s_.hold_choice.assign(p_.holds.size(), -1);
  }

  Exhausted run() {
    assign(0);
    return result_;
  }

 private:
  const Assignment& run_of(int i) const { return s_.activities[static_cast<std::size_t>(i)]; }
  bool known(int i, std::size_t upto) const { return static_cast<std::size_t>(i) < upto && run_of(i).present; }
  Time moment(const Point& p) const { return p.edge == Edge::end ? run_of(p.activity).end : run_of(p.activity).start; }
  static Time through(const Function& f, Time t) { return f == nullptr ? t : f->at(t); }
  static bool contains(const Intervals& v, Time t) {
    for (const Interval& i : v) {
      if (t >= i.begin && t < i.end) return true;
    }
    return false;
  }

  void assign(std::size_t i) {
    if (i == n_) return one_way_each() ? choose_holds(0) : void();
    const Activity& a = p_.activities[i];
    if (a.optional || may_be_left_out(static_cast<int>(i))) {
      s_.activities[i] = {0, 0, false, false};
      if (possible(i + 1)) assign(i + 1);
    }
    for (const bool shared : {false, true}) {
      if (shared && (a.family < 0 || a.end_shared == nullptr)) continue;
      for (Time t = first_; t <= p_.horizon; ++t) {
        if (!contains(shared && !a.starts_shared.empty() ? a.starts_shared : a.starts, t)) continue;
        const Time end = through(shared ? a.end_shared : a.end, t);
        if (end > p_.horizon) continue;
        s_.activities[i] = {t, end, true, shared};
        if (possible(i + 1)) assign(i + 1);
      }
    }
  }

  static bool in(const std::vector<int>& branch, int i) { return std::count(branch.begin(), branch.end(), i) > 0; }

  bool may_be_left_out(int i) const {
    bool in_one = false, in_all = true;
    for (const Alternative& alternative : p_.alternatives) {
      for (const auto& branch : alternative.branches) in_one = in_one || in(branch, i);
      for (const auto& branch : alternative.branches)
        in_all = in_all && (in(branch, i) || std::none_of(alternative.branches.begin(), alternative.branches.end(),
                                                          [i](const auto& w) { return in(w, i); }));
    }
    return in_one && !in_all;
  }

  // Those present are those of a single branch.
  bool one_way_each() const {
    for (const Alternative& alternative : p_.alternatives) {
      bool some = false;
      for (const auto& taken : alternative.branches) {
        bool all = true;
        for (const auto& branch : alternative.branches) {
          for (const int i : branch) all = all && run_of(i).present == in(taken, i);
        }
        some = some || all;
      }
      if (!some) return false;
    }
    return true;
  }

  // Whether the first `upto` activities break nothing among themselves that later ones cannot mend.
  bool possible(std::size_t upto) const {
    for (const MinimumLag& lag : p_.minimum_lags) {
      if (known(lag.from.activity, upto) && known(lag.to, upto) && run_of(lag.to).start < through(lag.bound, moment(lag.from)))
        return false;
    }
    for (const MaximumLag& lag : p_.maximum_lags) {
      if (!lag.remedy && known(lag.from.activity, upto) && known(lag.to, upto) && missed(lag)) return false;
    }
    const Assignment& last = s_.activities[upto - 1];
    return !last.present || enough(upto, false, last.start, last.end);
  }

  bool missed(const MaximumLag& lag) const { return through(lag.bound, moment(lag.from)) < run_of(lag.to).start; }

  // Slot by slot.
  bool enough(std::size_t upto, bool with_holds, Time begin, Time end) const {
    for (std::size_t r = 0; r < p_.resources.size(); ++r) {
      for (Time t = begin; t < end; ++t) {
        if (in_use(upto, with_holds, static_cast<int>(r), t) > p_.resources[r].capacity) return false;
      }
    }
    return true;
  }

  int in_use(std::size_t upto, bool with_holds, int resource, Time t) const {
    int used = 0;
    for (std::size_t i = 0; i < upto; ++i) {
      if (!s_.activities[i].present || t < s_.activities[i].start || t >= s_.activities[i].end) continue;
      for (const Demand& d : p_.activities[i].demands) used += d.resource == resource ? d.amount : 0;
    }
    for (std::size_t h = 0; with_holds && h < p_.holds.size(); ++h) {
      if (s_.hold_choice[h] < 0 || !holds_at(p_.holds[h], t)) continue;
      const Demand& d = p_.holds[h].choices[static_cast<std::size_t>(s_.hold_choice[h])];
      used += d.resource == resource ? d.amount : 0;
    }
    return used;
  }

  bool holds_at(const Hold& hold, Time t) const {
    if (t < run_of(hold.first).start) return false;
    for (const int until : hold.until) {
      if (run_of(until).present && t >= run_of(until).start) return false;
    }
    if (hold.limit && run_of(hold.limit_from.activity).present && t >= hold.limit->at(moment(hold.limit_from))) return false;
    return true;
  }

  void choose_holds(std::size_t h) {
    if (h == p_.holds.size()) return judge();
    if (!run_of(p_.holds[h].first).present) {
      s_.hold_choice[h] = -1;
      return choose_holds(h + 1);
    }
    for (std::size_t c = 0; c < p_.holds[h].choices.size(); ++c) {
      const Demand& d = p_.holds[h].choices[c];
      if (d.amount > p_.resources[static_cast<std::size_t>(d.resource)].capacity) continue;
      s_.hold_choice[h] = static_cast<int>(c);
      choose_holds(h + 1);
    }
  }

  void judge() {
    if (!optional_as_needed() || !shared_with_someone() || !within_capacity() || !enough(n_, true, first_, p_.horizon + 2) || !apart() ||
        !laid_out(0))
      return;
    const Score now = score(p_, s_);
    result_.least_ready = result_.feasible ? std::min(result_.least_ready, now.ready) : now.ready;
    if (!result_.feasible || now < result_.best) {
      result_.best = now;
      result_.schedule = s_;
    }
    result_.feasible = true;
  }

  bool optional_as_needed() const {
    std::vector<char> called(n_, 0);
    for (const MaximumLag& lag : p_.maximum_lags) {
      if (!lag.remedy || !run_of(lag.from.activity).present || !run_of(lag.to).present || !missed(lag)) continue;
      if (!run_of(*lag.remedy).present) return false;
      called[static_cast<std::size_t>(*lag.remedy)] = 1;
    }
    for (std::size_t i = 0; i < n_; ++i) {
      if (p_.activities[i].optional && s_.activities[i].present && called[i] == 0) return false;
    }
    return true;
  }

  bool shared_with_someone() const {
    for (std::size_t i = 0; i < n_; ++i) {
      if (!s_.activities[i].present || !s_.activities[i].shared) continue;
      bool found = false;
      for (std::size_t k = 0; k < n_; ++k) {
        const Time gap = s_.activities[i].start - s_.activities[k].end;
        found = found || (k != i && s_.activities[k].present && p_.activities[k].family == p_.activities[i].family && gap >= 0 &&
                          gap <= p_.sharing_gap);
      }
      if (!found) return false;
    }
    return true;
  }

  bool within_capacity() const {
    for (std::size_t i = 0; i < n_; ++i) {
      if (!s_.activities[i].present) continue;
      for (std::size_t r = 0; r < p_.resources.size(); ++r) {
        int amount = 0;
        for (const Demand& d : p_.activities[i].demands) amount += d.resource == static_cast<int>(r) ? d.amount : 0;
        if (amount > p_.resources[r].capacity) return false;
      }
    }
    return true;
  }

  bool covers(const Span& span, Time t) const {
    const Assignment& run = run_of(span.activity);
    return run.present && t >= run.start - span.lead && t < (span.tail == nullptr ? run.end : span.tail->at(run.start));
  }

  bool apart() const {
    for (const Exclusion& exclusion : p_.exclusions) {
      for (Time t = first_ - 10; t <= p_.horizon + 30; ++t) {
        for (const Span& l : exclusion.left) {
          for (const Span& r : exclusion.right) {
            if (l.activity != r.activity && covers(l, t) && covers(r, t)) return false;
          }
        }
      }
    }
    return true;
  }

  // Whether some way of laying the holds from h on leaves each its own stretch; positions are tried one by one.
  bool laid_out(std::size_t h) {
    if (h == 0) s_.hold_stretch.assign(p_.holds.size(), {});
    if (h == p_.holds.size()) return true;
    if (s_.hold_choice[h] < 0) return laid_out(h + 1);
    const Demand& d = p_.holds[h].choices[static_cast<std::size_t>(s_.hold_choice[h])];
    const Resource& r = p_.resources[static_cast<std::size_t>(d.resource)];
    if (r.segment == 0) return laid_out(h + 1);
    const int count = r.capacity / r.segment, whole = (d.amount + r.segment - 1) / r.segment;
    for (unsigned taken = 1; taken < (1U << static_cast<unsigned>(count)); ++taken) {
      Stretch stretch{{}, 0, whole > 1 ? r.segment : d.amount};
      for (int i = 0; i < count; ++i) {
        if (((taken >> static_cast<unsigned>(i)) & 1U) != 0) stretch.segments.push_back(i);
      }
      if (static_cast<int>(stretch.segments.size()) != whole) continue;
      for (; stretch.begin + stretch.length <= r.segment; ++stretch.begin) {
        s_.hold_stretch[h] = stretch;
        if (clear_of_earlier(h, d.resource) && laid_out(h + 1)) return true;
      }
    }
    return false;
  }

  bool clear_of_earlier(std::size_t h, int resource) const {
    const Stretch& mine = s_.hold_stretch[h];
    for (std::size_t other = 0; other < h; ++other) {
      const int choice = s_.hold_choice[other];
      if (choice < 0 || p_.holds[other].choices[static_cast<std::size_t>(choice)].resource != resource) continue;
      const Stretch& its = s_.hold_stretch[other];
      bool shared = false;
      for (const int a : mine.segments) {
        for (const int b : its.segments) shared = shared || a == b;
      }
      if (!shared || mine.begin >= its.begin + its.length || its.begin >= mine.begin + mine.length) continue;
      for (Time t = first_; t <= p_.horizon + 30; ++t) {
        if (holds_at(p_.holds[h], t) && holds_at(p_.holds[other], t)) return false;
      }
    }
    return true;
  }

  const Problem& p_;
  std::size_t n_;
  Time first_ = 0;
  Schedule s_;
  Exhausted result_;
};

}  // namespace

Exhausted exhaust(const Problem& problem) { return Search(problem).run(); }

}  // namespace coatday::solver::test
