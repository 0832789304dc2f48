#include "planner/model/model.h"

#include <algorithm>
#include <iterator>
#include <map>

#include "job/stages.h"
#include "planner/model/crews.h"
#include "planner/model/exhaust.h"
#include "planner/model/places_taken.h"
#include "planner/model/presence.h"
#include "planner/model/set_aside.h"
#include "planner/model/turns.h"

namespace coatday::planner {

namespace {

using finish::Stage;
using solver::Time;

class Builder {
 public:
  Builder(const job::Job& job, const Loads& loads, const TaskGraph& graph, Clocks& clocks, const Calendar& calendar, const Grid& grid,
          Scope scope)
      : job_(job),
        loads_(loads),
        graph_(graph),
        clocks_(clocks),
        calendar_(calendar),
        grid_(grid),
        whole_(scope == Scope::whole),
        taken_(loads, job.shop.gap) {}

  Model run() {
    problem().origin = 0;
    problem().horizon = calendar_.horizon();
    problem().sharing_gap = Grid::steps_within(job_.shop.sharing_gap);
    resources();
    for (std::size_t t = 0; t < graph_.tasks.size(); ++t) activity(t);
    if (whole_) crews();
    for (std::size_t i = 0; i < graph_.after.size(); ++i) minimum_lag(i);
    for (std::size_t i = 0; i < graph_.before.size(); ++i) maximum_lag(i);
    if (whole_) {
      for (std::size_t i = 0; i < graph_.place_holds.size(); ++i) hold(i);
      add_exhaust(model_, job_.shop.ventilation, graph_, clocks_, grid_);
      add_set_aside(model_, job_, loads_, graph_, clocks_, grid_);
      keep_dust_off();
      keep_sparks_off();
    }
    goals();
    if (whole_) people_come();
    return std::move(model_);
  }

 private:
  solver::Problem& problem() { return model_.problem; }

  solver::Tag tag(Requirement::Kind kind, std::size_t index) {
    model_.requirements.push_back({kind, index});
    return static_cast<solver::Tag>(model_.requirements.size() - 1);
  }

  void resources() {
    problem().resources.push_back({job_.shop.people, tag(Requirement::Kind::people, 0), 0});
    problem().resources.push_back({1, tag(Requirement::Kind::spray_gun, 0), 0});
    for (std::size_t p = 0; p < loads_.places.size(); ++p) {
      const shop::DryingPlace& place = loads_.places[p].place;
      const int steps = steps_of(place, job_.shop.gap);
      problem().resources.push_back({place.count * steps, tag(Requirement::Kind::place, p), steps > 1 ? steps : 0});
    }
  }
  static constexpr int people = 0;
  static constexpr int spray_gun = 1;
  static constexpr std::size_t most_tasks = 300;  // beyond, crews cost more time than they gain
  static int place(std::size_t p) { return static_cast<int>(p) + 2; }

  void activity(std::size_t t) {
    const Task& task = graph_.tasks[t];
    solver::Activity activity;
    activity.tag = tag(Requirement::Kind::calendar, t);
    if (task.done) {
      const Time start = grid_.down(task.done->start);
      activity.starts = {{start, start + 1}};
      activity.end = solver::shift(std::max(Time(0), grid_.up(task.done->end) - start));
    } else if (task.milestone) {
      activity.starts = delivery_hours(t);
    } else {
      timed(task, activity);
    }
    if (whole_ && task.earlier_start && !task.done && !task.fixed_start) activity.kept = grid_.down(*task.earlier_start);
    problem().activities.push_back(std::move(activity));
  }

  /// A piece leaves in working hours. Where all of it is done, they may be past.
  [[nodiscard]] solver::Intervals delivery_hours(std::size_t milestone) const {
    solver::Intervals hours;
    for (const solver::Interval& shift : all_done_before(milestone) ? calendar_.past_and_coming() : calendar_.working()) {
      hours.push_back({shift.begin, shift.end + 1});
    }
    return hours;
  }

  [[nodiscard]] bool all_done_before(std::size_t task) const {
    std::size_t count = 0;
    for (const After& after : graph_.after) {
      if (after.task != task) continue;
      if (!graph_.tasks[after.other].done) return false;
      ++count;
    }
    return count > 0;
  }

  void crews() {
    for (std::size_t t = 0; graph_.tasks.size() <= most_tasks && t < graph_.tasks.size(); ++t) {
      const Task& task = graph_.tasks[t];
      if (!task.crew || task.done) continue;
      solver::Activity activity;
      activity.tag = problem().activities[t].tag;
      timed(by_crew(task), activity);
      model_.by_crew[t] = static_cast<int>(problem().activities.size());
      problem().activities.push_back(std::move(activity));
      problem().alternatives.push_back({{{static_cast<int>(t)}, {model_.by_crew[t]}}, -1});
    }
  }

  /// The activities of which one does the task.
  [[nodiscard]] std::vector<int> activities(std::size_t task) const {
    const auto crew = model_.by_crew.find(task);
    return crew == model_.by_crew.end() ? std::vector{static_cast<int>(task)} : std::vector{static_cast<int>(task), crew->second};
  }

  void timed(const Task& task, solver::Activity& activity) {
    const Minutes least = whole_ || !task.crew ? task.hands_on : std::min(task.hands_on, task.crew->hands_on);
    const Time work = Grid::steps(Hours(least));
    const Time around = whole_ ? Grid::steps(Hours(task.set_up + task.clean_up)) : 0;
    activity.optional = task.optional || at_another_time(task);
    if (task.fixed_start) {
      fixed(task, work, activity);
    } else if (task.may_pause) {
      const Time until = task.not_after ? grid_.down(*task.not_after) : calendar_.horizon();
      activity.starts = calendar_.pausing(work, until);
      if (task.not_before) activity.starts = cut(activity.starts, std::max(Time(0), grid_.up(*task.not_before)), solver::unreachable);
      activity.end = calendar_.pausing_end(work);
    } else {
      activity.starts = starts(task, work + around);
      activity.end = solver::shift(work + around);
      if (around > 0) {
        activity.family = family(*task.product);
        activity.starts_shared = starts(task, work);
        activity.end_shared = solver::shift(work);
      }
    }
    if (!whole_) return;
    activity.demands.push_back({people, task.people});
    if (task.method && finish::is_spray(*task.method)) activity.demands.push_back({spray_gun, 1});
  }

  /// The shop's own work at its hour; what is over, or past the horizon, takes no part. At an odd minute it takes the whole steps that it
  /// touches.
  void fixed(const Task& task, Time work, solver::Activity& activity) {
    const Time start = grid_.down(*task.fixed_start);
    const Time steps = work + (grid_.up(*task.fixed_start) - start);
    activity.starts = {{start, start + 1}};
    activity.end = task.may_pause ? calendar_.pausing_end(steps) : solver::shift(steps);
    const Time end = activity.end->at(start);
    activity.optional = end <= 0 || end > calendar_.horizon() || start < 0;
  }

  /// The shop's movable work whose window is over, or begins past the horizon: it takes no part.
  [[nodiscard]] bool at_another_time(const Task& task) const {
    if (task.piece) return false;
    return (task.not_after && grid_.down(*task.not_after) <= 0) || (task.not_before && grid_.up(*task.not_before) >= calendar_.horizon());
  }

  solver::Intervals starts(const Task& task, Time steps) {
    solver::Intervals open = window(task, calendar_.unbroken(steps), steps);
    if (task.product == nullptr) return open;
    const auto mixing = graph_.mixings.find(task.product);
    const Mixing* mixed = mixing == graph_.mixings.end() ? nullptr : &mixing->second;
    open = intersection(open, starts_within(clocks_.allowed(task, mixed, grid_), steps));
    return task.at_rest ? intersection(open, on_grid(*task.at_rest)) : open;
  }

  [[nodiscard]] solver::Intervals on_grid(const std::vector<RestSpan>& spans) const {
    solver::Intervals result;
    for (const RestSpan& span : spans) {
      const solver::Interval steps{grid_.up(span.from), grid_.up(span.until)};
      if (steps.begin < steps.end) result.push_back(steps);
    }
    return result;
  }

  solver::Intervals window(const Task& task, solver::Intervals open, Time steps) const {
    if (task.not_before) open = cut(open, std::max(Time(0), grid_.up(*task.not_before)), solver::unreachable);
    if (task.not_after) open = cut(open, 0, grid_.down(*task.not_after) - steps + 1);
    return open;
  }

  int family(const finish::Product& product) { return families_.emplace(&product, static_cast<int>(families_.size())).first->second; }

  void minimum_lag(std::size_t i) {
    const After& after = graph_.after[i];
    if (graph_.tasks[after.task].done) return;  // what is done is done
    const auto estimate = after.late ? finish::Estimate::slow : finish::Estimate::expected;
    const solver::Function wait = wait_after(after.other, after.wait, estimate, Rounding::up);
    const solver::Tag why = tag(Requirement::Kind::after, i);
    for (const int other : activities(after.other)) {
      for (const int task : activities(after.task)) problem().minimum_lags.push_back({{other, solver::Edge::end}, task, wait, why});
    }
  }

  void maximum_lag(std::size_t i) {
    const Before& before = graph_.before[i];
    const bool scuffed = before.remedy && graph_.tasks[*before.remedy].done;
    if (graph_.tasks[before.task].done || scuffed) return;
    // A window that has a remedy does not bind, and a shorter one in a warmer shop must not move the bound.
    const bool closes = std::holds_alternative<StageOf>(before.limit);
    if (!whole_ && closes) return;
    solver::MaximumLag lag{{static_cast<int>(before.other), solver::Edge::end},
                           static_cast<int>(before.task),
                           wait_after(before.other, before.limit, finish::Estimate::fast, Rounding::down),
                           tag(Requirement::Kind::before, i),
                           std::nullopt};
    if (before.remedy) lag.remedy = static_cast<int>(*before.remedy);
    for (const int other : activities(before.other)) {
      for (const int task : activities(before.task)) {
        lag.from.activity = other;
        lag.to = task;
        problem().maximum_lags.push_back(lag);
      }
    }
  }

  /// What is done ended at its own minute, up to a step before its activity does.
  solver::Function wait_after(std::size_t task, const Wait& wait, finish::Estimate estimate, Rounding rounding) {
    const Task& other = graph_.tasks[task];
    if (!other.done) return clocks_.wait_function(grid_, wait, other, estimate, rounding);
    const auto end = clocks_.ends(wait, other, other.done->end, estimate);
    if (!end) return solver::shift(solver::unreachable);
    return solver::shift((rounding == Rounding::up ? grid_.up(*end) : grid_.down(*end)) - grid_.up(other.done->end));
  }

  void hold(std::size_t i) {
    const PlaceHold& place_hold = graph_.place_holds[i];
    const Task& coat = graph_.tasks[place_hold.coat];
    const Load& load = loads_.loads[place_hold.load];
    solver::Hold hold;
    hold.first = static_cast<int>(place_hold.coat);
    if (place_hold.until) hold.until = activities(*place_hold.until);
    hold.limit_from = {hold.first, solver::Edge::end};
    hold.limit = stage_function(coat, job::keeps_place(*coat.product, job_.shop));
    if (coat.done && (over(place_hold, hold.limit) || !taken_.take(load))) return;
    for (const PlaceChoice& choice : load.choices) hold.choices.push_back({place(choice.place), choice.steps});
    hold.tag = tag(Requirement::Kind::place, load.choices.empty() ? 0 : load.choices.front().place);
    model_.place_hold_of.push_back(i);
    problem().holds.push_back(std::move(hold));
  }

  /// What is done left its place before the plan begins.
  [[nodiscard]] bool over(const PlaceHold& hold, const solver::Function& limit) const {
    if (hold.until && graph_.tasks[*hold.until].done) return true;
    return limit->at(grid_.up(graph_.tasks[hold.coat].done->end)) <= 0;
  }

  solver::Function stage_function(const Task& coat, Stage stage) {
    return clocks_.wait_function(grid_, StageOf{stage}, coat, finish::Estimate::expected, Rounding::up);
  }

  solver::Span span_until(std::size_t t, Stage stage) {
    return {static_cast<int>(t), 0, solver::compose(stage_function(graph_.tasks[t], stage), problem().activities[t].end)};
  }

  /// What is done has kept off, or not: nobody can change it. Each side keeps off what is still to come on the other.
  void exclude(const solver::Exclusion& all) {
    const auto done = [this](const solver::Span& span) {
      const auto task = static_cast<std::size_t>(span.activity);
      return task < graph_.tasks.size() && graph_.tasks[task].done.has_value();
    };
    solver::Exclusion coming = all, past{{}, all.right, all.tag};
    std::copy_if(all.left.begin(), all.left.end(), std::back_inserter(past.left), done);
    std::erase_if(coming.left, done);
    std::erase_if(past.right, done);
    for (solver::Exclusion* one : {&coming, &past}) {
      if (!one->left.empty() && !one->right.empty()) problem().exclusions.push_back(std::move(*one));
    }
  }

  void keep_dust_off() {
    solver::Exclusion exclusion;
    exclusion.tag = tag(Requirement::Kind::dust, 0);
    for (std::size_t t = 0; t < graph_.tasks.size(); ++t) {
      const Task& task = graph_.tasks[t];
      if (task.product != nullptr) exclusion.right.push_back(span_until(t, job::wet_until(*task.product)));
      if (task.dust == shop::Dust::none) continue;
      const Hours settles = task.dust == shop::Dust::heavy ? job_.shop.heavy_dust_settles : job_.shop.light_dust_settles;
      for (const int a : activities(t)) {
        const solver::Function& end = problem().activities[static_cast<std::size_t>(a)].end;
        exclusion.left.push_back({a, 0, solver::compose(solver::shift(Grid::steps(settles)), end)});
      }
    }
    exclude(exclusion);
  }

  /// With a clear time after either.
  void keep_sparks_off() {
    solver::Exclusion exclusion;
    exclusion.tag = tag(Requirement::Kind::vapour, 0);
    const solver::Function clear = solver::shift(Grid::steps(job_.shop.hot_work_clear));
    const auto later = [&clear](solver::Span span, const solver::Function& end) {
      span.tail = solver::compose(clear, span.tail ? span.tail : end);
      return span;
    };
    for (std::size_t t = 0; t < graph_.tasks.size(); ++t) {
      const Task& task = graph_.tasks[t];
      const solver::Function& end = problem().activities[t].end;
      if (task.product != nullptr && task.product->flammable())
        exclusion.right.push_back(later(span_until(t, job::vapour_until(*task.product)), end));
      if (task.hot) exclusion.left.push_back(later({static_cast<int>(t), 0, nullptr}, end));
    }
    exclude(exclusion);
  }

  void goals() {
    const std::map<std::string, Time> younger = whole_ ? turns(job_.order, grid_) : std::map<std::string, Time>();
    for (const Delivery& delivery : graph_.deliveries) {
      const job::OrderPiece& piece = job_.order.pieces[delivery.piece];
      const int order = orders_.emplace(piece.order, 2 * static_cast<int>(orders_.size())).first->second;
      if (whole_) problem().goals.push_back({static_cast<int>(delivery.expected), solver::unreachable, 1, -1, {}, order + 1});
      const auto last = static_cast<int>(delivery.work.value_or(delivery.safe));
      const Time due = piece.promised ? latest_in_time(last, grid_.down(*piece.promised)) : solver::unreachable;
      solver::Goal goal{last, due, piece.importance, tag(Requirement::Kind::promised, delivery.piece), {}, order};
      const auto turn = piece.promised ? younger.end() : younger.find(piece.order);
      if (turn != younger.end()) goal.turn = solver::Turn{turn->second, 0, Grid::steps(Hours(24))};
      problem().goals.push_back(goal);
    }
  }

  /// The latest start of an activity that ends by then.
  [[nodiscard]] Time latest_in_time(int activity, Time end) const {
    const solver::Function& ends = model_.problem.activities[static_cast<std::size_t>(activity)].end;
    return ends ? ends->latest(end, -1, end) : end;
  }

  /// A crew's work brings people in as one person's does.
  void people_come() {
    solver::Presence presence = presence_of(job_.shop, graph_, calendar_, grid_);
    presence.hands.resize(problem().activities.size());
    for (const auto& [task, crew] : model_.by_crew) presence.hands[static_cast<std::size_t>(crew)] = presence.hands[task];
    problem().presence = std::move(presence);
  }

  const job::Job& job_;
  const Loads& loads_;
  const TaskGraph& graph_;
  Clocks& clocks_;
  const Calendar& calendar_;
  const Grid& grid_;
  bool whole_;
  PlacesTaken taken_;  // by what is done
  Model model_;
  std::map<const finish::Product*, int> families_;
  std::map<std::string, int> orders_;
};

}  // namespace

Model make_model(const job::Job& job, const Loads& loads, const TaskGraph& graph, Clocks& clocks, const Calendar& calendar,
                 const Grid& grid, Scope scope) {
  return Builder(job, loads, graph, clocks, calendar, grid, scope).run();
}

}  // namespace coatday::planner
