#include "planner/result/time_spent.h"

#include <algorithm>
#include <map>

#include "planner/result/in_the_way.h"

namespace coatday::planner {

namespace {

using job::TimeCause;
using solver::Interval;
using solver::Time;
using Kind = Requirement::Kind;

constexpr Time an_hour = 12;
constexpr Time most_moments = 40;

class WayBack {
 public:
  WayBack(const job::Job& job, const TaskGraph& graph, const Model& model, const solver::Schedule& schedule, const Calendar& calendar,
          const Grid& grid, solver::Blockers& blockers)
      : job_(job), graph_(graph), model_(model), schedule_(schedule), calendar_(calendar), grid_(grid), blockers_(blockers) {}

  job::TimeSpent from(std::size_t delivery) {
    std::optional<std::size_t> task = delivery;
    while (task && run(*task).start > 0) task = before(*task);
    job::TimeSpent spent;
    for (const auto& [key, share] : shares_) {
      if (share.time <= Hours(0)) continue;
      spent.shares.push_back(share);
      spent.all += share.time;
    }
    std::stable_sort(spent.shares.begin(), spent.shares.end(),
                     [](const job::TimeShare& a, const job::TimeShare& b) { return a.time > b.time; });
    return spent;
  }

 private:
  [[nodiscard]] const solver::Assignment& run(std::size_t task) const { return schedule_.activities[task]; }

  job::TimeShare& add(TimeCause cause, Time begin, Time end, const std::string& place = "") {
    job::TimeShare& share = shares_.try_emplace({cause, place}, job::TimeShare{cause, place}).first->second;
    if (end > std::max(begin, Time(0))) share.time += Hours(job::time_step) * (end - std::max(begin, Time(0)));
    return share;
  }

  /// What came before the start of this task; returns the task that it then goes on with.
  std::optional<std::size_t> before(std::size_t task) {
    const Time start = run(task).start;
    const solver::MinimumLag* binding = nullptr;
    Time released = 0;
    for (const solver::MinimumLag& lag : model_.problem.minimum_lags) {
      if (static_cast<std::size_t>(lag.to) != task || !run(static_cast<std::size_t>(lag.from.activity)).present) continue;
      const Time t = solver::value_of(lag.bound, point(lag.from));
      if (t < released || (binding != nullptr && t == released)) continue;
      released = t;
      binding = &lag;
    }
    const auto& not_before = graph_.tasks[task].not_before;
    const Time opens = std::min(start, not_before ? std::max(released, grid_.up(*not_before)) : released);
    waited(task, opens, start);
    add(TimeCause::start, released, opens);
    if (binding == nullptr) return std::nullopt;
    const auto other = static_cast<std::size_t>(binding->from.activity);
    dried(binding->tag, point(binding->from), std::min(released, opens));
    if (graph_.tasks[other].done) return std::nullopt;
    worked(run(other).start, run(other).end);
    return other;
  }

  [[nodiscard]] Time point(const solver::Point& p) const {
    const solver::Assignment& of = run(static_cast<std::size_t>(p.activity));
    return p.edge == solver::Edge::start ? of.start : of.end;
  }

  /// Work that rests while the shop is closed.
  void worked(Time begin, Time end) {
    Time closed = begin;
    for (const Interval& open : calendar_.working()) {
      if (open.end <= begin || open.begin >= end) continue;
      add(TimeCause::closed, closed, std::max(open.begin, begin));
      add(TimeCause::work, std::max(open.begin, begin), std::min(open.end, end));
      closed = std::min(open.end, end);
    }
    add(TimeCause::closed, closed, end);
  }

  void dried(solver::Tag tag, Time begin, Time end) {
    const After& after = graph_.after[model_.requirements[static_cast<std::size_t>(tag)].index];
    const Task& coat = graph_.tasks[after.other];
    if (std::holds_alternative<Elapsed>(after.wait)) return void(add(TimeCause::rest, begin, end));
    if (std::holds_alternative<WarmedUp>(after.wait)) return void(add(TimeCause::air, begin, end));
    job::TimeShare& drying = add(TimeCause::drying, begin, end);
    if (coat.product != nullptr && end > 0)
      drying.slower += std::max(Hours(0), Hours(job::time_step) * (end - std::max(begin, Time(0))) - in_reference_air(after, coat));
  }

  [[nodiscard]] static Hours in_reference_air(const After& after, const Task& coat) {
    if (const auto* dried = std::get_if<Dried>(&after.wait)) return dried->need;
    const auto hours = coat.product->reference().hours[std::get<StageOf>(after.wait).stage];
    return hours.value_or(Hours(0)) * (after.late ? coat.drying.slow : coat.drying.expected);
  }

  /// From the moment at which nothing before it held it up until its start.
  void waited(std::size_t task, Time from, Time start) {
    const auto activity = static_cast<int>(task);
    const Time step = std::max(an_hour, (start - from) / most_moments);
    const Time first = std::min(start, std::max(from, blockers_.first_open(activity, from)));
    Time until = start;
    for (Time t = blockers_.last_open(activity, start - 1); t >= from && until > first;) {
      const Time next = blockers_.last_open(activity, t - step);
      const Time begin = next < from ? first : t;
      hindered(activity, t, begin, until);
      until = begin;
      t = next;
    }
    closed_or_air(task, from, first);
  }

  /// What keeps its follower keeps it.
  void hindered(int activity, Time start, Time begin, Time end) {
    std::vector<solver::Blocker> failing = blockers_.failing(activity, start);
    const solver::Blocker* blocker = first_of(failing, model_);
    if (blocker != nullptr && blocker->rule == solver::Blocker::Rule::limit) {
      solver::Follower follower = blockers_.follower(activity, start, *blocker);
      if (!follower.last_open) return void(add(TimeCause::closed, begin, end));
      failing = std::move(follower.blockers);
      blocker = first_of(failing, model_);
      if (blocker == nullptr || blocker->rule == solver::Blocker::Rule::limit) return void(add(TimeCause::limit, begin, end));
    }
    if (blocker == nullptr || blocker->tag < 0) return void(add(TimeCause::visit, begin, end));
    const Requirement& rule = model_.requirements[static_cast<std::size_t>(blocker->tag)];
    static const std::map<Kind, TimeCause> causes{{Kind::place, TimeCause::place},     {Kind::set_aside, TimeCause::set_aside},
                                                  {Kind::people, TimeCause::hands},    {Kind::spray_gun, TimeCause::spray_gun},
                                                  {Kind::airflow, TimeCause::exhaust}, {Kind::dust, TimeCause::dust},
                                                  {Kind::vapour, TimeCause::hot_work}};
    add(causes.at(rule.kind), begin, end, rule.kind == Kind::place ? job_.shop.places[rule.index].name : "");
  }

  /// Hours that are long enough, and do not suit a coat, are a matter of air.
  void closed_or_air(std::size_t t, Time from, Time until) {
    const Task& task = graph_.tasks[t];
    Time opens = until;
    for (const Interval& open : calendar_.working()) {
      const Time begin = std::max(open.begin, from);
      if (task.product == nullptr || begin >= until) break;
      if (begin + run(t).end - run(t).start > open.end) continue;
      opens = begin;
      break;
    }
    add(TimeCause::closed, from, opens);
    add(TimeCause::air, opens, until);
  }

  const job::Job& job_;
  const TaskGraph& graph_;
  const Model& model_;
  const solver::Schedule& schedule_;
  const Calendar& calendar_;
  const Grid& grid_;
  solver::Blockers& blockers_;
  std::map<std::pair<TimeCause, std::string>, job::TimeShare> shares_;
};

}  // namespace

std::vector<job::TimeSpent> time_spent(const job::Job& job, const TaskGraph& graph, const Model& model, const solver::Schedule& schedule,
                                       const Calendar& calendar, const Grid& grid) {
  std::map<std::string, std::size_t> last;  // delivery of each order
  const auto start = [&schedule](std::size_t task) { return schedule.activities[task].start; };
  for (const Delivery& delivery : graph.deliveries) {
    const auto [known, added] = last.try_emplace(job.order.pieces[delivery.piece].order, delivery.safe);
    if (!added && start(delivery.safe) > start(known->second)) known->second = delivery.safe;
  }
  solver::Blockers blockers(model.problem, schedule);
  std::vector<job::TimeSpent> all;
  for (const auto& [order, delivery] : last) {
    all.push_back(WayBack(job, graph, model, schedule, calendar, grid, blockers).from(delivery));
    all.back().order = order;
  }
  return all;
}

}  // namespace coatday::planner
