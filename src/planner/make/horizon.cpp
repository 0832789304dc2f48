#include "planner/make/horizon.h"

#include <algorithm>
#include <map>

#include "job/stages.h"

namespace coatday::planner {

namespace {

constexpr Hours a_day{24}, a_week{7 * 24};
constexpr double generous = 1.5;      // hours that no step can use
constexpr date::days spare{28};       // for closed days and for air that does not suit
constexpr date::days least_place{1};  // whoever takes a load off and puts the next one on has to be there

class Guess {
 public:
  Guess(const job::Job& job, const Loads& loads, const TaskGraph& graph, Instant from)
      : job_(job), loads_(loads), graph_(graph), from_(from), chains_(graph.tasks.size(), Hours(-1)) {
    for (std::size_t i = 0; i < graph.after.size(); ++i) before_.emplace(graph.after[i].task, i);
  }

  Hours run() {
    Hours longest{0};
    for (std::size_t t = 0; t < graph_.tasks.size(); ++t) longest = std::max(longest, chain(t));
    return given() + generous * std::max(hands(), places()) + longest + Hours(spare);
  }

 private:
  /// Until the last moment that the order itself names.
  [[nodiscard]] Hours given() const {
    Instant last = from_;
    for (const Task& task : graph_.tasks) {
      if (!task.piece) continue;
      if (task.not_before) last = std::max(last, *task.not_before);
      if (task.fixed_start) last = std::max(last, *task.fixed_start);
      if (task.done) last = std::max(last, task.done->end);
    }
    return last - from_;
  }

  /// Work as it goes in a week of the shop.
  [[nodiscard]] Hours calendar(Hours work) const {
    Hours open{0};
    for (const shop::Shift& shift : job_.shop.week) open += shift.until - shift.from;
    return open > Hours(0) ? work * (a_week / open) : work;
  }

  [[nodiscard]] static Hours work(const Task& task) {
    return task.done || task.milestone ? Hours(0) : Hours(task.hands_on + task.set_up + task.clean_up);
  }

  [[nodiscard]] Hours hands() const {
    Hours sum{0};
    for (const Task& task : graph_.tasks) sum += work(task) * task.people;
    return calendar(sum / std::max(1, job_.shop.people));
  }

  [[nodiscard]] static Hours label(const finish::Product& product, finish::Stage stage) {
    return product.reference().hours[stage].value_or(Hours(0));
  }

  /// The fullest kind of place, if each load keeps to the first that takes it.
  [[nodiscard]] Hours places() const {
    std::map<std::size_t, Hours> busy;
    for (const PlaceHold& hold : graph_.place_holds) {
      const Load& load = loads_.loads[hold.load];
      const Task& coat = graph_.tasks[hold.coat];
      if (coat.done || load.choices.empty()) continue;
      const PlaceChoice& choice = load.choices.front();
      const shop::DryingPlace& place = loads_.places[choice.place].place;
      const double share = double(choice.steps) / (steps_of(place, job_.shop.gap) * place.count);
      busy[choice.place] += share * std::max(Hours(least_place), label(*coat.product, job::keeps_place(*coat.product, job_.shop)));
    }
    Hours most{0};
    for (const auto& [place, hours] : busy) most = std::max(most, hours);
    return most;
  }

  [[nodiscard]] Hours wait(const After& after) const {
    if (const auto* elapsed = std::get_if<Elapsed>(&after.wait)) return elapsed->hours;
    const Task& other = graph_.tasks[after.other];
    if (const auto* stage = std::get_if<StageOf>(&after.wait)) return 2 * label(*other.product, stage->stage);
    if (const auto* dried = std::get_if<Dried>(&after.wait)) return 2 * dried->need;
    return a_day;
  }

  /// Until the task is over, when nothing but its own chain holds it up.
  [[nodiscard]] Hours chain(std::size_t task) {
    if (chains_[task] >= Hours(0)) return chains_[task];
    chains_[task] = Hours(0);
    Hours longest{0};
    const auto [first, last] = before_.equal_range(task);
    for (auto it = first; it != last; ++it) {
      const After& after = graph_.after[it->second];
      longest = std::max(longest, chain(after.other) + wait(after));
    }
    return chains_[task] = longest + calendar(work(graph_.tasks[task]));
  }

  const job::Job& job_;
  const Loads& loads_;
  const TaskGraph& graph_;
  Instant from_;
  std::vector<Hours> chains_;                       // by task; less than nothing: not known yet
  std::multimap<std::size_t, std::size_t> before_;  // indices into TaskGraph::after, by task
};

}  // namespace

date::days last_horizon(Instant from) {
  const Instant end = date::sys_days(date::year(last_year + 1) / date::January / 1);
  return std::max(date::days(1), std::chrono::floor<date::days>(end - from));
}

date::days first_horizon(const job::Job& job, const Loads& loads, const TaskGraph& graph, Instant from) {
  const Hours longest = std::chrono::hours(24) * last_horizon(from).count();
  return std::chrono::ceil<date::days>(std::min(longest, Guess(job, loads, graph, from).run()));
}

bool cured(const job::Plan& plan) {
  return std::all_of(plan.events.begin(), plan.events.end(), [&](const job::Event& event) {
    if (event.product.empty()) return true;
    const finish::Product& product = plan.products.at(event.product);
    for (std::size_t s = 0; s < finish::stage_count; ++s) {
      const auto stage = static_cast<finish::Stage>(s);
      if (job::has_stage(product, stage) && !event.stages.slow[stage]) return false;
    }
    return true;
  });
}

}  // namespace coatday::planner
