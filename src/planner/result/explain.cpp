#include "planner/result/explain.h"

#include <algorithm>
#include <map>

#include <fmt/core.h>

#include "finish/application_limits.h"
#include "job/stages.h"

namespace coatday::planner {

namespace {

using solver::Time;

class Explainer {
 public:
  Explainer(const job::Plan& plan, const TaskGraph& graph, const Model& model, Clocks& clocks, const Grid& grid)
      : plan_(plan), graph_(graph), model_(model), clocks_(clocks), grid_(grid) {
    for (std::size_t t = 0; t < graph.tasks.size(); ++t) task_by_id_[graph.tasks[t].id] = t;
    for (const job::Event& event : plan.events) event_by_id_[event.id] = &event;
  }

  std::string sentence(const job::Event& event) {
    if (event.done) return "done, as recorded";
    if (event.fixed) return "at its fixed hour";
    const job::AfterEvent* last = binding(event);
    const std::size_t task = task_by_id_.at(event.id);
    const Instant opens = std::max(plan_.from, graph_.tasks[task].not_before.value_or(plan_.from));
    const Instant ready = last != nullptr ? std::max(last->earliest, opens) : opens;
    const std::string since = last != nullptr && last->earliest > opens ? reason(*last)
                              : opens > plan_.from                      ? opening(graph_.tasks[task], opens)
                                                                        : "nothing before it to wait for";
    const Time start = grid_.down(event.start);
    const Time soonest = grid_.up(ready);
    if (event.kind == job::EventKind::turn && start > soonest) return fmt::format("{}; turned just before the next coat", since);
    if (start <= soonest) return "as soon as it may be: " + since;
    const solver::Intervals& open = model_.problem.activities[task].starts;
    const Time allowed = first_in(open, soonest);
    if (start <= allowed) return fmt::format("{}; then {}", since, closed_or_air(event, soonest));
    if (graph_.tasks[task].earlier_start == event.start) return since + "; kept where the earlier plan has it";
    return fmt::format("{}; until then {}", since, stood_in_the_way(event, grid_.instant(last_in(open, start))));
  }

 private:
  static const job::AfterEvent* binding(const job::Event& event) {
    const job::AfterEvent* last = nullptr;
    for (const job::AfterEvent& after : event.after) {
      if (last == nullptr || after.earliest > last->earliest) last = &after;
    }
    return last;
  }

  static std::string named(const job::Event& event) {
    return event.load_name.empty() ? event.name : fmt::format("{} ({})", event.name, event.load_name);
  }

  std::string opening(const Task& task, Instant opens) const {
    if (task.not_before_why.empty() || task.not_before != opens) return "not before " + when(opens);
    return task.not_before_why + " from " + when(opens);
  }

  std::string when(Instant t) const { return day_and_time(plan_.shop.zone.to_local(t)); }

  std::string reason(const job::AfterEvent& after) const {
    const auto other = event_by_id_.find(after.event);
    const std::string name = other == event_by_id_.end() ? after.event : named(*other->second);
    if (after.stage)
      return fmt::format("{} is {} at {}", name, after.reason.empty() ? job::dry_to(*after.stage) : after.reason, when(after.earliest));
    if (after.reason.empty()) return fmt::format("{} is over at {}", name, when(after.earliest));
    return fmt::format("{} at {}", after.reason, when(after.earliest));
  }

  static Time first_in(const solver::Intervals& open, Time t) {
    for (const solver::Interval& interval : open) {
      if (interval.end > t) return std::max(interval.begin, t);
    }
    return solver::unreachable;
  }

  static Time last_in(const solver::Intervals& open, Time before) {
    Time last = 0;
    for (const solver::Interval& interval : open) {
      if (interval.begin < before) last = std::min(interval.end, before) - 1;
    }
    return last;
  }

  std::string closed_or_air(const job::Event& event, Time soonest) {
    const Instant wanted = grid_.instant(soonest);
    const auto fits = std::any_of(plan_.working.begin(), plan_.working.end(), [&](const shop::WorkingTime& shift) {
      return shift.begin <= wanted && wanted + (event.end - event.start) <= shift.end;
    });
    if (fits && !event.product.empty()) {
      if (const auto air = finish::limit_exceeded(plan_.products.at(event.product), conditions(event), wanted,
                                                  wanted + (event.end - event.start), plan_.shop.units)) {
        return "it has to wait: " + *air;
      }
    }
    const auto next =
        std::find_if(plan_.working.begin(), plan_.working.end(), [&](const shop::WorkingTime& s) { return s.begin > wanted; });
    const bool open = std::any_of(plan_.working.begin(), plan_.working.end(),
                                  [&](const shop::WorkingTime& s) { return s.begin <= wanted && wanted < s.end; });
    if (open) return "too little of the shift is left for it";
    if (next != plan_.working.end() && event.start > next->begin && !event.product.empty()) return air_at(event, next->begin);
    return "the shop is closed until its start";
  }

  std::string air_at(const job::Event& event, Instant opening) {
    const auto air = finish::limit_exceeded(plan_.products.at(event.product), conditions(event), opening,
                                            opening + (event.end - event.start), plan_.shop.units);
    if (!air) return "it fits into no earlier shift";
    return fmt::format("the shop is closed, and at {} it has to wait: {}", when(opening), *air);
  }

  /// What stood in the way last, at the last moment before the start when clocks, hours and air would have let it begin, or shortly before:
  /// work that leaves room may begin a little later than it could.
  std::string stood_in_the_way(const job::Event& event, Instant last) const {
    constexpr Minutes shortly{30};
    for (Instant at = last; at > last - shortly && at >= plan_.from; at -= job::time_step) {
      if (auto words = taken(event, at)) return *std::move(words);
    }
    return "other work, or no free drying place, came first";
  }

  /// What stood in the way of beginning at that moment, where that is known.
  std::optional<std::string> taken(const job::Event& event, Instant at) const {
    const Instant end = at + (event.end - event.start);
    for (const job::Event& other : plan_.events) {
      if (&other == &event) continue;
      if (event.dust != shop::Dust::none && !other.product.empty() && overlaps(at, end + settles(event.dust), other.start, wet(other))) {
        return named(other) + " was wet and dust would have spoilt it";
      }
      if (!event.product.empty() && other.dust != shop::Dust::none &&
          overlaps(other.start, other.end + settles(other.dust), at, wet_from(event, at))) {
        return fmt::format("the dust of {} had to settle", named(other));
      }
      if (event.hot && !other.product.empty() && overlaps(at, end + clear(), other.start, vapour(other) + clear()))
        return fmt::format("there was vapour of {}, and {} are kept clear after it", named(other), format_span(plan_.shop.hot_work_clear));
      if (!event.product.empty() && other.hot && plan_.products.at(event.product).flammable() &&
          overlaps(other.start, other.end + clear(), at, wet_from(event, at) + clear())) {
        return fmt::format("{} made sparks, with {} of fire watch after it", named(other), format_span(plan_.shop.hot_work_clear));
      }
    }
    int busy = 0;
    std::string by;
    for (const job::Event& other : plan_.events) {
      if (&other == &event || !overlaps(other.start, other.end, at, end)) continue;
      busy += other.people;
      by = named(other);
    }
    if (busy + event.people > plan_.shop.people) return fmt::format("everybody was busy with {}", by);
    if (vapour_in_the_way(event, at)) return "the exhaust had to carry off the vapour of other coats first";
    for (const job::Event& other : plan_.events) {
      for (const job::BeforeEvent& limit : other.before) {
        if (limit.event == event.id) return fmt::format("{} would not have followed within its limit", named(other));
      }
    }
    return std::nullopt;
  }

  bool vapour_in_the_way(const job::Event& event, Instant at) const {
    const auto& airflow = plan_.shop.ventilation.airflow;
    if (!airflow || !event.vapour) return false;
    CubicMetresPerHour together = event.vapour->airflow;
    for (const job::Event& other : plan_.events) {
      if (&other != &event && other.vapour && overlaps(at, wet_from(event, at), other.start, wet(other))) together += other.vapour->airflow;
    }
    return together > *airflow;
  }

  finish::Conditions conditions(const job::Event& coat) const { return clocks_.conditions(graph_.tasks[task_by_id_.at(coat.id)]); }

  static bool overlaps(Instant a, Instant a_end, Instant b, Instant b_end) { return a < b_end && b < a_end; }

  std::chrono::seconds settles(shop::Dust dust) const {
    return std::chrono::ceil<std::chrono::seconds>(dust == shop::Dust::heavy ? plan_.shop.heavy_dust_settles
                                                                             : plan_.shop.light_dust_settles);
  }
  std::chrono::seconds clear() const { return std::chrono::ceil<std::chrono::seconds>(plan_.shop.hot_work_clear); }
  Instant wet(const job::Event& coat) const {
    return coat.stages.expected[job::wet_until(plan_.products.at(coat.product))].value_or(coat.end);
  }
  Instant vapour(const job::Event& coat) const {
    const finish::Product& product = plan_.products.at(coat.product);
    return product.flammable() ? coat.stages.expected[job::vapour_until(product)].value_or(coat.end) : coat.start;
  }
  Instant wet_from(const job::Event& event, Instant at) const {
    const finish::Product& product = plan_.products.at(event.product);
    const Instant end = at + (event.end - event.start);
    return clocks_.reached(graph_.tasks[task_by_id_.at(event.id)], job::wet_until(product), end, finish::Estimate::expected).value_or(end);
  }

  const job::Plan& plan_;
  const TaskGraph& graph_;
  const Model& model_;
  Clocks& clocks_;
  const Grid& grid_;
  std::map<std::string, std::size_t> task_by_id_;
  std::map<std::string, const job::Event*> event_by_id_;
};

}  // namespace

void explain_starts(job::Plan& plan, const TaskGraph& graph, const Model& model, Clocks& clocks, const Grid& grid) {
  Explainer explainer(plan, graph, model, clocks, grid);
  for (job::Event& event : plan.events) event.why = explainer.sentence(event);
}

}  // namespace coatday::planner
