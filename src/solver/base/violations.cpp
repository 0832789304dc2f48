// What a sound schedule is, requirement by requirement, as plainly as possible. This code and the search share no rules, so that a mistake
// in one cannot hide a mistake in the other.

#include "solver/base/violations.h"

#include <algorithm>
#include <map>

#include "solver/base/index.h"

namespace coatday::solver {
namespace {

std::string number(long value) { return std::to_string(value); }

class Checker {
 public:
  Checker(const Problem& problem, const Schedule& schedule) : problem_(problem), schedule_(schedule) {}

  std::vector<std::string> run() {
    if (schedule_.activities.size() != problem_.activities.size() || schedule_.hold_choice.size() != problem_.holds.size()) {
      return {"the schedule does not have the problem's activities and holds"};
    }
    for (int i = 0; i < count(); ++i) check_activity(i);
    for (std::size_t i = 0; i < problem_.minimum_lags.size(); ++i) check_minimum(static_cast<long>(i), problem_.minimum_lags[i]);
    for (std::size_t i = 0; i < problem_.maximum_lags.size(); ++i) check_maximum(static_cast<long>(i), problem_.maximum_lags[i]);
    for (std::size_t i = 0; i < problem_.holds.size(); ++i) check_hold(static_cast<long>(i), problem_.holds[i], schedule_.hold_choice[i]);
    check_resources();
    check_layout();
    for (std::size_t i = 0; i < problem_.alternatives.size(); ++i) check_alternative(static_cast<long>(i), problem_.alternatives[i]);
    for (std::size_t i = 0; i < problem_.exclusions.size(); ++i) check_exclusion(static_cast<long>(i), problem_.exclusions[i]);
    return std::move(found_);
  }

 private:
  [[nodiscard]] int count() const { return static_cast<int>(problem_.activities.size()); }
  [[nodiscard]] const Activity& activity(int i) const { return problem_.activities[at(i)]; }
  [[nodiscard]] const Assignment& run_of(int i) const { return schedule_.activities[at(i)]; }
  [[nodiscard]] bool present(int i) const { return run_of(i).present; }
  [[nodiscard]] Time value(const Point& p) const { return p.edge == Edge::start ? run_of(p.activity).start : run_of(p.activity).end; }
  static Time apply(const Function& f, Time t) { return f ? f->at(t) : t; }
  static bool within(const Intervals& intervals, Time t) {
    return std::any_of(intervals.begin(), intervals.end(), [t](const Interval& i) { return i.begin <= t && t < i.end; });
  }
  void report(std::string text) { found_.push_back(std::move(text)); }

  void check_activity(int i) {
    const Activity& a = activity(i);
    const Assignment& run = run_of(i);
    const std::string name = "activity " + number(i);
    if (!run.present) {
      if (!a.optional && !in_alternative(i)) report(name + " takes no part, but it is not optional");
      return;
    }
    if (a.optional && !remedies_something(i)) report(name + " takes part, but no window that it remedies is missed");
    if (run.shared && !may_share(i)) report(name + " shares a set-up, but none of its family ends in time before it");
    const Intervals& starts = run.shared && !a.starts_shared.empty() ? a.starts_shared : a.starts;
    if (!within(starts, run.start)) report(name + " starts at " + number(run.start) + ", outside its allowed starts");
    const Time end = apply(run.shared ? a.end_shared : a.end, run.start);
    if (run.end != end) report(name + " ends at " + number(run.end) + " instead of " + number(end));
    if (run.end > problem_.horizon) report(name + " ends at " + number(run.end) + ", after the horizon " + number(problem_.horizon));
    std::map<int, int> totals;
    for (const auto& [resource, amount] : a.demands) totals[resource] += amount;
    for (const auto& [resource, amount] : totals) check_amount(name, resource, amount);
  }

  [[nodiscard]] static bool has(const std::vector<int>& branch, int i) {
    return std::find(branch.begin(), branch.end(), i) != branch.end();
  }

  [[nodiscard]] bool in_alternative(int i) const {
    return std::any_of(problem_.alternatives.begin(), problem_.alternatives.end(), [i](const Alternative& alternative) {
      return std::any_of(alternative.branches.begin(), alternative.branches.end(),
                         [i](const std::vector<int>& branch) { return has(branch, i); });
    });
  }

  void check_alternative(long index, const Alternative& alternative) {
    const bool one = std::any_of(alternative.branches.begin(), alternative.branches.end(), [&](const std::vector<int>& taken) {
      return std::all_of(alternative.branches.begin(), alternative.branches.end(), [&](const std::vector<int>& branch) {
        return std::all_of(branch.begin(), branch.end(), [&](int i) { return present(i) == has(taken, i); });
      });
    });
    if (!one) report("alternative " + number(index) + ": the activities that take part are none of its branches");
  }

  [[nodiscard]] bool remedies_something(int i) const {
    return std::any_of(problem_.maximum_lags.begin(), problem_.maximum_lags.end(),
                       [&](const MaximumLag& lag) { return lag.remedy == i && missed(lag); });
  }

  [[nodiscard]] bool may_share(int i) const {
    const Activity& a = activity(i);
    if (a.family < 0 || !a.end_shared) return false;
    for (int k = 0; k < count(); ++k) {
      if (k == i || !present(k) || activity(k).family != a.family) continue;
      if (run_of(k).end <= run_of(i).start && run_of(k).end >= run_of(i).start - problem_.sharing_gap) return true;
    }
    return false;
  }

  void check_amount(const std::string& who, int resource, int amount) {
    const int capacity = problem_.resources[at(resource)].capacity;
    if (amount > capacity) {
      report(who + " demands " + number(amount) + " of resource " + number(resource) + "; its capacity is " + number(capacity));
    }
  }

  void check_minimum(long index, const MinimumLag& lag) {
    if (!present(lag.from.activity) || !present(lag.to)) return;
    const Time bound = apply(lag.bound, value(lag.from));
    if (run_of(lag.to).start >= bound) return;
    report("minimum lag " + number(index) + ": activity " + number(lag.to) + " starts at " + number(run_of(lag.to).start) + ", before " +
           number(bound));
  }

  [[nodiscard]] bool missed(const MaximumLag& lag) const {
    return present(lag.from.activity) && present(lag.to) && run_of(lag.to).start > apply(lag.bound, value(lag.from));
  }

  void check_maximum(long index, const MaximumLag& lag) {
    if (!missed(lag) || (lag.remedy && present(*lag.remedy))) return;
    report("maximum lag " + number(index) + ": activity " + number(lag.to) + " starts at " + number(run_of(lag.to).start) + ", after " +
           number(apply(lag.bound, value(lag.from))) + (lag.remedy ? ", without its remedy " + number(*lag.remedy) : std::string()));
  }

  [[nodiscard]] Interval held(const Hold& hold) const {
    Time end = unreachable;
    for (const int until : hold.until) {
      if (present(until)) end = std::min(end, run_of(until).start);
    }
    if (hold.limit && present(hold.limit_from.activity)) end = std::min(end, hold.limit->at(value(hold.limit_from)));
    return {run_of(hold.first).start, end};
  }

  void check_hold(long index, const Hold& hold, int choice) {
    const std::string name = "hold " + number(index);
    const bool held_at_all = present(hold.first);
    if (!held_at_all && choice != -1) report(name + " has a choice, but activity " + number(hold.first) + " takes no part");
    if (!held_at_all) return;
    if (choice < 0 || choice >= static_cast<int>(hold.choices.size())) return report(name + " has no choice");
    const Demand& chosen = hold.choices[at(choice)];
    check_amount(name, chosen.resource, chosen.amount);
  }

  void check_resources() {
    std::vector<std::map<Time, long>> change(problem_.resources.size());
    const auto use = [&](const Demand& demand, Interval time) {
      if (time.begin >= time.end) return;
      change[at(demand.resource)][time.begin] += demand.amount;
      change[at(demand.resource)][time.end] -= demand.amount;
    };
    for (int i = 0; i < count(); ++i) {
      if (!present(i)) continue;
      for (const Demand& demand : activity(i).demands) use(demand, {run_of(i).start, run_of(i).end});
    }
    for (std::size_t i = 0; i < problem_.holds.size(); ++i) {
      const Hold& hold = problem_.holds[i];
      const int choice = schedule_.hold_choice[i];
      if (!present(hold.first) || choice < 0 || choice >= static_cast<int>(hold.choices.size())) continue;
      use(hold.choices[at(choice)], held(hold));
    }
    for (std::size_t r = 0; r < change.size(); ++r) check_usage(static_cast<long>(r), problem_.resources[r].capacity, change[r]);
  }

  /// Whether the stretch has the size that the choice demands.
  void check_stretch(std::size_t i, const Demand& demand, const Stretch& stretch) {
    const Resource& resource = problem_.resources[at(demand.resource)];
    const int whole = (demand.amount + resource.segment - 1) / resource.segment;
    const bool right = static_cast<int>(stretch.segments.size()) == whole && stretch.begin >= 0 &&
                       stretch.length == (whole > 1 ? resource.segment : demand.amount) &&
                       stretch.begin + stretch.length <= resource.segment;
    const bool there = std::all_of(stretch.segments.begin(), stretch.segments.end(),
                                   [&](int s) { return s >= 0 && (s + 1) * resource.segment <= resource.capacity; });
    if (!right || !there) report("hold " + number(static_cast<long>(i)) + " is not laid out as its choice demands");
  }

  static bool meet(const Stretch& a, const Stretch& b) {
    const bool along = a.begin < b.begin + b.length && b.begin < a.begin + a.length;
    return along && std::any_of(a.segments.begin(), a.segments.end(),
                                [&](int s) { return std::find(b.segments.begin(), b.segments.end(), s) != b.segments.end(); });
  }

  void check_layout() {
    struct Laid {
      std::size_t hold;
      int resource;
      Interval time;
    };
    std::vector<Laid> laid;
    for (std::size_t i = 0; i < problem_.holds.size(); ++i) {
      const Hold& hold = problem_.holds[i];
      const int choice = schedule_.hold_choice[i];
      if (!present(hold.first) || choice < 0 || choice >= static_cast<int>(hold.choices.size())) continue;
      const Demand& demand = hold.choices[at(choice)];
      const Interval time = held(hold);
      if (problem_.resources[at(demand.resource)].segment <= 0 || time.begin >= time.end) continue;
      if (schedule_.hold_stretch.size() != problem_.holds.size()) return report("the schedule is not laid out");
      check_stretch(i, demand, schedule_.hold_stretch[i]);
      laid.push_back({i, demand.resource, time});
    }
    std::sort(laid.begin(), laid.end(), [](const Laid& a, const Laid& b) { return a.time.begin < b.time.begin; });
    for (std::size_t a = 0; a < laid.size(); ++a) {
      for (std::size_t b = a + 1; b < laid.size() && laid[b].time.begin < laid[a].time.end; ++b) {
        if (laid[a].resource != laid[b].resource || !meet(schedule_.hold_stretch[laid[a].hold], schedule_.hold_stretch[laid[b].hold]))
          continue;
        report("holds " + number(static_cast<long>(laid[a].hold)) + " and " + number(static_cast<long>(laid[b].hold)) +
               " lie on the same stretch of resource " + number(laid[a].resource));
      }
    }
  }

  void check_usage(long resource, int capacity, const std::map<Time, long>& change) {
    long used = 0;
    for (const auto& [time, by] : change) {
      used += by;
      if (used <= capacity) continue;
      return report("resource " + number(resource) + ": " + number(used) + " are in use from " + number(time) + ", the capacity is " +
                    number(capacity));
    }
  }

  [[nodiscard]] Interval covered(const Span& span) const {
    const Assignment& run = run_of(span.activity);
    return {run.start - span.lead, span.tail ? span.tail->at(run.start) : run.end};
  }

  void check_exclusion(long index, const Exclusion& exclusion) {
    for (const Span& left : exclusion.left) {
      for (const Span& right : exclusion.right) {
        if (left.activity == right.activity || !present(left.activity) || !present(right.activity)) continue;
        const Interval a = covered(left), b = covered(right);
        if (a.begin >= a.end || b.begin >= b.end || a.begin >= b.end || b.begin >= a.end) continue;
        report("exclusion " + number(index) + ": activities " + number(left.activity) + " and " + number(right.activity) + " overlap");
      }
    }
  }

  const Problem& problem_;
  const Schedule& schedule_;
  std::vector<std::string> found_;
};

}  // namespace

std::vector<std::string> violations(const Problem& problem, const Schedule& schedule) { return Checker(problem, schedule).run(); }

}  // namespace coatday::solver
