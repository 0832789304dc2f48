#include "planner/result/events.h"

#include <algorithm>
#include <map>
#include <numeric>

#include <fmt/core.h>

#include "job/stages.h"
#include "planner/result/cautions.h"
#include "planner/result/hand_over.h"
#include "planner/result/set_aside.h"

namespace coatday::planner {

namespace {

class Writer {
 public:
  Writer(job::Plan& plan, const job::Job& job, const Loads& loads, const TaskGraph& graph, const solver::Schedule& schedule,
         const std::vector<PlaceAssignment>& assignments, Clocks& clocks, const Grid& grid)
      : plan_(plan),
        job_(job),
        loads_(loads),
        graph_(graph),
        schedule_(schedule),
        assignments_(assignments),
        clocks_(clocks),
        grid_(grid),
        packed_(packed_at(graph, schedule, clocks, grid)) {}

  void run() {
    plan_.faces = loads_.faces;
    plan_.events.clear();
    plan_.places.clear();
    plan_.pieces.clear();
    std::vector<std::size_t> order;
    for (std::size_t t = 0; t < graph_.tasks.size(); ++t) {
      if (schedule_.activities[t].present && !graph_.tasks[t].milestone) order.push_back(t);
    }
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return start(a) < start(b); });
    for (const std::size_t t : order) {
      event_of_task_[t] = plan_.events.size();
      plan_.events.push_back(event(t));
    }
    constraints();
    place_uses();
    for (const job::Event& event : plan_.events) count_film(event);
    for (const Delivery& delivery : graph_.deliveries) {
      const std::size_t last = delivery.work.value_or(delivery.safe);
      const job::Event* work = delivery.work ? &plan_.events[event_of_task_.at(last)] : nullptr;
      const Delivered safe = work != nullptr ? Delivered{work->start, work->end} : Delivered{instant(last), instant(last)};
      plan_.pieces.push_back(hand_over(plan_, job_, delivery.piece, instant(delivery.expected), safe));
    }
  }

 private:
  [[nodiscard]] solver::Time start(std::size_t t) const { return schedule_.activities[t].start; }
  [[nodiscard]] Instant instant(std::size_t t) const { return grid_.instant(start(t)); }

  job::Event event(std::size_t t) {
    const Task& task = graph_.tasks[t];
    const solver::Assignment& when = schedule_.activities[t];
    job::Event event;
    event.id = task.id;
    event.step_id = task.step_id;
    event.kind = task.kind;
    event.name = task.name;
    event.piece = task.piece;
    if (task.load) event.load = loads_.loads[*task.load].label;
    if (task.load) event.load_name = loads_.loads[*task.load].load_name;
    if (!task.load && task.piece && job_.order.pieces.size() > 1) event.load_name = job_.order.pieces[*task.piece].piece.name;
    event.faces = task.faces;
    event.step = task.step;
    event.coat = task.coat;
    const shop::WorkingTime span = span_of(task, when);
    event.start = span.begin;
    event.end = span.end;
    event.set_up = when.shared ? Minutes(0) : task.set_up;
    event.clean_up = when.shared ? Minutes(0) : task.clean_up;
    event.people = task.people;
    event.hot = task.hot;
    event.dust = task.dust;
    event.may_pause = task.may_pause;
    event.done = task.done.has_value();
    event.fixed = task.fixed_start.has_value();
    event.delivers = task.delivers;
    event.method = task.method;
    event.grit = task.grit;
    event.bake = task.bake;
    event.support = task.support;
    event.note = task.note;
    if (task.product != nullptr) coat(task, event);
    event.cautions = cautions_of(event, task.product, task.piece ? &job_.order.pieces[*task.piece].piece : nullptr);
    if (task.heavy) event.cautions.emplace_back("heavy");
    for (const std::string& key : event.cautions) plan_.cautions.emplace(key, caution_text(key));
    return event;
  }

  /// What is done, and what has a fixed hour, may lie at odd minutes.
  [[nodiscard]] shop::WorkingTime span_of(const Task& task, const solver::Assignment& when) const {
    if (task.done) return {task.done->start, task.done->end};
    const Instant until = grid_.instant(when.end);
    if (!task.fixed_start) return {grid_.instant(when.start), until};
    const Instant start = *task.fixed_start;
    return {start, task.may_pause ? shop::worked_until(job_.shop, start, task.hands_on, until) : start + task.hands_on};
  }

  void coat(const Task& task, job::Event& event) {
    event.product = task.product->id;
    event.film = task.product->film;
    event.mixes = task.mixes;
    event.stages.expected = clocks_.stages(task, event.end, finish::Estimate::expected);
    event.stages.slow = clocks_.stages(task, event.end, finish::Estimate::slow);
    event.stages.fast = clocks_.stages(task, event.end, finish::Estimate::fast);
    event.bodies = task.bodies;
    plan_.products.emplace(task.product->id, *task.product);
    if (task.stand) event.wipe_by = event.end - event.clean_up;
    event.wet_film = task.wet_film;
    event.drying = task.drying;
    event.volume = task.volume;
    event.vapour = task.vapour;
  }

  void constraints() {
    for (const After& after : graph_.after) {
      const auto task = event_of_task_.find(after.task);
      const auto other = event_of_task_.find(after.other);
      if (task == event_of_task_.end() || other == event_of_task_.end()) continue;
      const job::Event& before = plan_.events[other->second];
      const auto side = after.late ? finish::Estimate::slow : finish::Estimate::expected;
      const auto earliest = clocks_.ends(after.wait, graph_.tasks[after.other], before.end, side);
      if (!earliest) continue;
      std::string reason = after.reason;
      if (std::holds_alternative<WarmedUp>(after.wait)) reason += fmt::format(" for {} and is warm", format_span(*earliest - before.end));
      plan_.events[task->second].after.push_back({before.id, stage_of(after.wait), *earliest, std::move(reason), after.late});
    }
    for (const Before& limit : graph_.before) {
      const auto task = event_of_task_.find(limit.task);
      const auto other = event_of_task_.find(limit.other);
      if (task == event_of_task_.end() || other == event_of_task_.end()) continue;
      const job::Event& before = plan_.events[other->second];
      if (limit.remedy && event_of_task_.count(*limit.remedy) != 0) {  // scuffed instead
        say_no_window(plan_.events[event_of_task_.at(*limit.remedy)], before);
        continue;
      }
      const auto latest = clocks_.ends(limit.limit, graph_.tasks[limit.other], before.end, finish::Estimate::fast);
      if (latest) plan_.events[task->second].before.push_back({before.id, stage_of(limit.limit), *latest, limit.reason});
    }
  }

  /// A window that may be over before it is surely open.
  static void say_no_window(job::Event& scuff, const job::Event& below) {
    const auto& open = below.stages.slow[finish::Stage::recoat];
    const auto& close = below.stages.fast[finish::Stage::recoat_close];
    if (scuff.done || !close || (open && *open < *close)) return;
    scuff.note =
        fmt::format("no recoat window is sure in this air: {} may be too hard to bond before it is surely dry to recoat", below.name);
  }

  static std::optional<finish::Stage> stage_of(const Wait& wait) {
    if (const auto* stage = std::get_if<StageOf>(&wait)) return stage->stage;
    if (std::holds_alternative<Dried>(wait)) return finish::Stage::recoat;
    return std::nullopt;
  }

  void place_uses() {
    for (const PlaceAssignment& assignment : assignments_) {
      const Load& load = loads_.loads[graph_.place_holds[assignment.place_hold].load];
      const PlaceChoice& choice = load.choices[assignment.choice];
      const shop::DryingPlace& place = job_.shop.places[choice.place];
      for (std::size_t n = 0; n < assignment.numbers.size(); ++n) {
        job::PlaceUse use;
        use.event = event_of_task_.at(graph_.place_holds[assignment.place_hold].coat);
        use.place = place.count == 1 ? place.name : fmt::format("{} {}", place.name, assignment.numbers[n] + 1);
        use.from = grid_.instant(assignment.from);
        use.until = grid_.instant(assignment.left[n]);
        if (assignment.left[n] < packed_[assignment.place_hold]) use.then = {use.until, packed_until(assignment.place_hold)};
        use.across = loads_.places[choice.place].turned;
        use.laid = laid(load, choice.packing.places[n], stretch_step * assignment.begin);
        if (use.across) use.laid = turned(use.laid);
        plan_.places.push_back(std::move(use));
      }
    }
  }

  /// The air may end before it is dry to pack.
  [[nodiscard]] Instant packed_until(std::size_t place_hold) const {
    return packed_[place_hold] < solver::unreachable ? grid_.instant(packed_[place_hold]) : plan_.until;
  }

  static std::vector<shop::Laid> laid(const Load& load, std::vector<shop::Laid> rows, Metres from) {
    for (shop::Laid& row : rows) {
      row.item = load.parts[row.item].part;
      row.x += from;
    }
    return rows;
  }

  /// Rows across a place turned are rows along it.
  static std::vector<shop::Laid> turned(const std::vector<shop::Laid>& rows) {
    std::vector<shop::Laid> result;
    for (const shop::Laid& row : rows) {
      for (int n = 0; n < row.count; ++n) result.push_back({row.item, 1, row.y + row.across * n, row.x, row.across, row.along});
    }
    return result;
  }

  void count_film(const job::Event& event) {
    if (!event.film) return;
    for (const std::size_t face : event.faces) ++plan_.faces[face].coats;
  }

  job::Plan& plan_;
  const job::Job& job_;
  const Loads& loads_;
  const TaskGraph& graph_;
  const solver::Schedule& schedule_;
  const std::vector<PlaceAssignment>& assignments_;
  Clocks& clocks_;
  const Grid& grid_;
  std::vector<solver::Time> packed_;  // by place hold
  std::map<std::size_t, std::size_t> event_of_task_;
};

}  // namespace

void write_events(job::Plan& plan, const job::Job& job, const Loads& loads, const TaskGraph& graph, const solver::Schedule& schedule,
                  const std::vector<PlaceAssignment>& assignments, Clocks& clocks, const Grid& grid) {
  Writer(plan, job, loads, graph, schedule, assignments, clocks, grid).run();
}

}  // namespace coatday::planner
