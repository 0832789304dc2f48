#include "tests/gecode/flatzinc.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace coatday::solver::test {
namespace {

using Name = std::string;  // of a variable, or a constant
using Names = std::vector<Name>;

constexpr Time late_enough = 5000;  // stands for all that is later than anything of interest

std::string list(const Names& names) {
  std::string result;
  for (const Name& name : names) result += (result.empty() ? "" : ",") + name;
  return "[" + result + "]";
}

Name text(Time t) { return std::to_string(t); }
Time at(const Function& f, Time t) { return std::min(f ? f->at(t) : t, late_enough); }
std::size_t index(int i) { return static_cast<std::size_t>(i); }

class Writer {
 public:
  explicit Writer(const Problem& problem) : p_(problem) {
    for (const Activity& a : p_.activities) {
      for (const Intervals* starts : {&a.starts, &a.starts_shared}) {
        if (!starts->empty()) first_ = std::min(first_, starts->front().begin);
      }
    }
  }

  std::string run() {
    for (const Activity& a : p_.activities) add_activity(a);
    for (int i = 0; i < static_cast<int>(runs_.size()); ++i) add_partners(i);
    for (const MinimumLag& lag : p_.minimum_lags) {
      clause({at_most(image(lag.from, lag.bound), run(lag.to).start)}, {run(lag.from.activity).present, run(lag.to).present});
    }
    add_maximum_lags();
    add_resources();
    for (const Exclusion& exclusion : p_.exclusions) add_exclusion(exclusion);
    const Name objective = add_objective();
    Names starts;
    for (const Run& r : runs_) starts.push_back(r.start);
    return variables_ + constraints_ + "solve :: int_search(" + list(starts) + ",smallest,indomain_min,complete) minimize " + objective +
           ";\n";
  }

 private:
  struct Run {
    Name present, shared, start, end;
  };

  const Run& run(int i) const { return runs_[index(i)]; }
  Name integer(Time low, Time high, const Name& name = {}) {
    const Name result = name.empty() ? "x" + std::to_string(count_++) : name;
    variables_ += "var " + text(low) + ".." + text(high) + ": " + result + (name.empty() ? "" : " :: output_var") + ";\n";
    return result;
  }
  Name boolean() {
    const Name result = "b" + std::to_string(count_++);
    variables_ += "var bool: " + result + ";\n";
    return result;
  }
  void constraint(const std::string& words) { constraints_ += "constraint " + words + ";\n"; }
  // One of these, or not all of those.
  void clause(const Names& any, const Names& none) { constraint("bool_clause(" + list(any) + "," + list(none) + ")"); }
  Name at_most(const Name& a, const Name& b) {
    const Name result = boolean();
    constraint("int_le_reif(" + a + "," + b + "," + result + ")");
    return result;
  }
  // a + more <= b.
  Name at_most(const Name& a, Time more, const Name& b) {
    const Name result = boolean();
    constraint("int_lin_le_reif([1,-1],[" + a + "," + b + "]," + text(-more) + "," + result + ")");
    return result;
  }
  Name all_of(const Names& names) {
    const Name result = boolean();
    constraint("array_bool_and(" + list(names) + "," + result + ")");
    return result;
  }
  Name any_of(const Names& names) {
    const Name result = boolean();
    constraint("array_bool_or(" + list(names) + "," + result + ")");
    return result;
  }
  Name negation(const Name& name) {
    const Name result = boolean();
    constraint("bool_not(" + name + "," + result + ")");
    return result;
  }
  void table(const Names& names, const Names& rows) { constraint("gecode_table_int(" + list(names) + "," + list(rows) + ")"); }
  Name of(const Name& x, const Function& f) {
    if (!f) return x;
    Names rows;
    Time low = late_enough, high = -late_enough;
    for (Time t = first_; t <= p_.horizon; ++t) {
      rows.insert(rows.end(), {text(t), text(at(f, t))});
      low = std::min(low, at(f, t));
      high = std::max(high, at(f, t));
    }
    const Name result = integer(low, high);
    table({x, result}, rows);
    return result;
  }
  Name image(const Point& p, const Function& f) { return of(p.edge == Edge::end ? run(p.activity).end : run(p.activity).start, f); }

  // All that one activity can do, row by row.
  void add_activity(const Activity& a) {
    const Name present = integer(0, 1), shared = integer(0, 1);
    Run r{boolean(), boolean(), integer(first_, p_.horizon), integer(first_, p_.horizon)};
    constraint("bool2int(" + r.present + "," + present + ")");
    constraint("bool2int(" + r.shared + "," + shared + ")");
    Names rows;
    if (a.optional) rows = {"0", "0", text(p_.horizon), text(p_.horizon)};
    for (const bool with : {false, true}) {
      if (!within_capacity(a) || (with && (a.family < 0 || !a.end_shared))) continue;
      for (const Interval& i : with && !a.starts_shared.empty() ? a.starts_shared : a.starts) {
        for (Time t = i.begin; t < i.end && t <= p_.horizon; ++t) {
          const Time end = at(with ? a.end_shared : a.end, t);
          if (end <= p_.horizon) rows.insert(rows.end(), {"1", with ? "1" : "0", text(t), text(end)});
        }
      }
    }
    if (rows.empty()) constraint("bool_clause([],[true])");
    if (!rows.empty()) table({present, shared, r.start, r.end}, rows);
    runs_.push_back(std::move(r));
  }

  bool within_capacity(const Activity& a) const {
    for (int resource = 0; resource < static_cast<int>(p_.resources.size()); ++resource) {
      int amount = 0;
      for (const Demand& d : a.demands) amount += d.resource == resource ? d.amount : 0;
      if (amount > p_.resources[index(resource)].capacity) return false;
    }
    return true;
  }

  void add_partners(int i) {
    Names any;
    for (int k = 0; k < static_cast<int>(runs_.size()); ++k) {
      if (k == i || p_.activities[index(i)].family < 0 || p_.activities[index(k)].family != p_.activities[index(i)].family) continue;
      any.push_back(all_of({run(k).present, at_most(run(k).end, run(i).start), at_most(run(i).start, -p_.sharing_gap, run(k).end)}));
    }
    clause(any, {run(i).shared});
  }

  // A lag with a remedy is missed or kept; whoever is optional takes part just when one of its lags is missed.
  void add_maximum_lags() {
    std::vector<Names> missed(runs_.size());
    for (const MaximumLag& lag : p_.maximum_lags) {
      const Name kept = at_most(run(lag.to).start, image(lag.from, lag.bound));
      const Name both = all_of({run(lag.from.activity).present, run(lag.to).present});
      if (!lag.remedy) {
        clause({kept}, {both});
      } else if (p_.activities[index(*lag.remedy)].optional) {
        missed[index(*lag.remedy)].push_back(all_of({both, negation(kept)}));
      }
    }
    for (std::size_t i = 0; i < runs_.size(); ++i) {
      if (!p_.activities[i].optional) continue;
      clause(missed[i], {runs_[i].present});
      for (const Name& one : missed[i]) clause({runs_[i].present}, {one});
    }
  }

  // Who uses how much of a resource at a time.
  struct Loads {
    Names who, amounts;
  };

  void add_resources() {
    std::vector<Names> chosen;  // by hold
    std::vector<Name> limits;
    for (const Hold& hold : p_.holds) {
      chosen.push_back(choices(hold));
      limits.push_back(hold.limit ? image(hold.limit_from, hold.limit) : "");
    }
    for (Time t = first_; t <= p_.horizon; ++t) {
      std::vector<Loads> loads(p_.resources.size());
      const auto use = [&](const Name& who, const Demand& d) {
        loads[index(d.resource)].who.push_back(who);
        loads[index(d.resource)].amounts.push_back(text(d.amount));
      };
      for (std::size_t i = 0; i < runs_.size(); ++i) {
        if (p_.activities[i].demands.empty()) continue;
        const Name busy = all_of({runs_[i].present, at_most(runs_[i].start, text(t)), at_most(text(t + 1), runs_[i].end)});
        for (const Demand& d : p_.activities[i].demands) use(busy, d);
      }
      for (std::size_t h = 0; h < p_.holds.size(); ++h) {
        const Name held = holds_at(p_.holds[h], limits[h], t);
        for (std::size_t c = 0; c < chosen[h].size(); ++c) use(all_of({held, chosen[h][c]}), p_.holds[h].choices[c]);
      }
      for (std::size_t r = 0; r < loads.size(); ++r) {
        if (loads[r].who.empty()) continue;
        constraint("bool_lin_le(" + list(loads[r].amounts) + "," + list(loads[r].who) + "," + text(p_.resources[r].capacity) + ")");
      }
    }
  }

  Names choices(const Hold& hold) {
    Names result;
    for (const Demand& d : hold.choices) {
      result.push_back(boolean());
      if (d.amount > p_.resources[index(d.resource)].capacity) clause({}, {result.back()});
    }
    clause(result, {run(hold.first).present});
    for (std::size_t c = 0; c < result.size(); ++c) {
      for (std::size_t k = 0; k < c; ++k) clause({}, {result[c], result[k]});
    }
    return result;
  }

  Name holds_at(const Hold& hold, const Name& limit, Time t) {
    Names all{run(hold.first).present, at_most(run(hold.first).start, text(t))};
    for (const int until : hold.until) all.push_back(any_of({negation(run(until).present), at_most(text(t + 1), run(until).start)}));
    if (hold.limit) all.push_back(any_of({negation(run(hold.limit_from.activity).present), at_most(text(t + 1), limit)}));
    return all_of(all);
  }

  struct Stretch {
    Name begin;
    Time lead;  // before it
    Name end;
  };

  Name begins_before(const Stretch& a, const Stretch& b) { return at_most(a.begin, 1 - a.lead, b.end); }

  void add_exclusion(const Exclusion& exclusion) {
    const auto stretch = [&](const Span& span) {
      return Stretch{run(span.activity).start, span.lead, span.tail ? of(run(span.activity).start, span.tail) : run(span.activity).end};
    };
    for (const Span& left : exclusion.left) {
      for (const Span& right : exclusion.right) {
        if (left.activity == right.activity) continue;
        const Stretch l = stretch(left), r = stretch(right);
        clause({}, {run(left.activity).present, run(right.activity).present, begins_before(l, r), begins_before(r, l), begins_before(l, l),
                    begins_before(r, r)});
      }
    }
  }

  Name add_objective() {
    const Name ready = integer(p_.goals.empty() ? 0 : first_, p_.goals.empty() ? 0 : p_.horizon);
    Names terms{ready}, factors{"1"};
    for (const Goal& goal : p_.goals) {
      const Run& r = run(goal.activity);
      clause({at_most(r.start, ready)}, {r.present});
      const Time weight = static_cast<Time>(std::lround(2 * goal.weight));
      if (goal.due >= p_.horizon || weight == 0) continue;
      const Name late = integer(0, p_.horizon - std::min(goal.due, first_));
      clause({at_most(r.start, -goal.due, late)}, {r.present});  // start - due <= late
      terms.push_back(late);
      factors.push_back(text(weight * ready_range));
    }
    const Name objective = integer(-ready_range, 1'000'000'000, "objective");
    terms.push_back(objective);
    factors.push_back("-1");
    constraint("int_lin_eq(" + list(factors) + "," + list(terms) + ",0)");
    return objective;
  }

  const Problem& p_;
  Time first_ = 0;
  std::vector<Run> runs_;
  int count_ = 0;
  std::string variables_, constraints_;
};

}  // namespace

std::string flatzinc_of(const Problem& problem) { return Writer(problem).run(); }

}  // namespace coatday::solver::test
