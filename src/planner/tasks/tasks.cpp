#include <algorithm>

#include <fmt/core.h>

#include "job/stages.h"
#include "job/time_step.h"
#include "planner/tasks/carry_in.h"
#include "planner/tasks/history.h"
#include "planner/tasks/load_walk.h"

namespace coatday::planner {

namespace {

/// The order's and the shop's other work.
class WorkWalk {
 public:
  explicit WorkWalk(TaskGraph& graph) : graph_(graph) {}

  /// Of a piece, or the shop's own.
  std::size_t add(const shop::Work& work, std::optional<std::size_t> piece, const std::string& piece_id) {
    Task task;
    task.identify({piece_id, "", work.id, job::StepId::Pass::only, job::StepId::Kind::other_work});
    task.name = work.name;
    task.piece = piece;
    task.hands_on = job::in_whole_steps(work.takes);
    task.people = work.people;
    task.dust = work.dust;
    task.hot = work.hot;
    task.may_pause = work.may_pause;
    task.fixed_start = work.start;
    task.not_before = work.not_before;
    task.not_after = work.not_after;
    graph_.tasks.push_back(std::move(task));
    return graph_.tasks.size() - 1;
  }

  void follow(std::size_t task, std::size_t other, const shop::Work& before) {
    const std::string reason =
        before.rest > Hours(0) ? fmt::format("{} rests {}", before.name, format_span(before.rest)) : "after " + before.name;
    graph_.after.push_back({task, other, Elapsed{before.rest}, false, reason});
  }

 private:
  TaskGraph& graph_;
};

class PieceWalk {
 public:
  PieceWalk(const job::Job& job, const Loads& loads, Sides sides, std::size_t piece, TaskGraph& graph)
      : job_(job), loads_(loads), sides_(sides), piece_(piece), order_(job.order.pieces[piece]), graph_(graph) {}

  void run() {
    for (std::size_t l = 0; l < loads_.loads.size(); ++l) {
      if (loads_.loads[l].piece != piece_) continue;
      walks_.emplace_back(l, LoadWalk(job_, loads_, sides_, l, graph_));
      walks_.back().second.run();
    }
    before_finishing();
    after_finishing();
    deliver();
  }

 private:
  [[nodiscard]] bool concerns(const job::OrderWork& work, const Load& load) const {
    if (work.parts.empty()) return true;
    return std::any_of(load.parts.begin(), load.parts.end(), [&](const LoadPart& p) {
      const std::string& id = order_.piece.parts[p.part].id;
      return std::find(work.parts.begin(), work.parts.end(), id) != work.parts.end();
    });
  }

  [[nodiscard]] static bool share_parts(const job::OrderWork& a, const job::OrderWork& b) {
    if (a.parts.empty() || b.parts.empty()) return true;
    return std::any_of(a.parts.begin(), a.parts.end(),
                       [&](const std::string& p) { return std::find(b.parts.begin(), b.parts.end(), p) != b.parts.end(); });
  }

  /// Works of one side of the finishing that touch the same parts follow each other as listed.
  void chain(std::vector<std::pair<const job::OrderWork*, std::size_t>>& earlier, const job::OrderWork& work, std::size_t task) {
    WorkWalk works(graph_);
    for (const auto& [before, id] : earlier) {
      if (share_parts(*before, work)) works.follow(task, id, before->work);
    }
    earlier.emplace_back(&work, task);
  }

  void before_finishing() {
    WorkWalk works(graph_);
    std::vector<std::pair<const job::OrderWork*, std::size_t>> earlier;
    for (const job::OrderWork& work : order_.work) {
      if (work.when != job::OrderWork::When::before_finishing) continue;
      const std::size_t id = works.add(work.work, piece_, order_.piece.id);
      chain(earlier, work, id);
      for (auto& [l, walk] : walks_) {
        if (!concerns(work, loads_.loads[l])) continue;
        for (const std::size_t first : walk.first_tasks()) works.follow(first, id, work.work);
      }
    }
  }

  void after_finishing() {
    WorkWalk works(graph_);
    for (const job::OrderWork& work : order_.work) {
      if (work.when != job::OrderWork::When::after_finishing) continue;
      const std::size_t id = works.add(work.work, piece_, order_.piece.id);
      chain(later_, work, id);
      if (work.delivery) delivery_ = id;
      graph_.tasks[id].delivers = work.delivery;
      for (auto& [l, walk] : walks_) {
        if (!concerns(work, loads_.loads[l])) continue;
        wait_for_load(id, walk, work.stage, false);
        for (const std::size_t hold : walk.open_holds()) {
          if (!graph_.place_holds[hold].until) graph_.place_holds[hold].until = id;
        }
      }
    }
  }

  void wait_for_load(std::size_t task, const LoadWalk& walk, finish::Stage stage, bool late) {
    for (const std::size_t coat : walk.coats()) {
      const finish::Product& product = *graph_.tasks[coat].product;
      const finish::Stage reached = job::has_stage(product, stage) ? stage : job::handled(product);
      graph_.after.push_back({task, coat, StageOf{reached}, late, job::dry_to(reached)});
    }
    for (const std::size_t last : walk.last_tasks())
      graph_.after.push_back({task, last, Elapsed{}, late, "after " + graph_.tasks[last].name});
  }

  std::size_t milestone(const std::string& name, bool late) {
    Task task;
    task.identify({order_.piece.id, "", name, job::StepId::Pass::only, job::StepId::Kind::other_work});
    task.name = name;
    task.piece = piece_;
    task.milestone = true;
    graph_.tasks.push_back(std::move(task));
    const std::size_t id = graph_.tasks.size() - 1;
    for (const auto& [l, walk] : walks_) wait_for_load(id, walk, finish::Stage::pack, late);
    WorkWalk works(graph_);
    for (const auto& [work, other] : later_) {
      if (!work->delivery) works.follow(id, other, work->work);
    }
    return id;
  }

  void deliver() {
    Delivery delivery{piece_, milestone("may be delivered", false), milestone("may safely be delivered", true), {}};
    if (delivery_ && graph_.tasks[*delivery_].fixed_start) {  // agreed already: whether it is safe is for the findings
      graph_.after.push_back({*delivery_, delivery.expected, Elapsed{}, false, "may be delivered"});
    } else if (delivery_) {
      graph_.after.push_back({*delivery_, delivery.safe, Elapsed{}, false, "may safely be delivered"});
      delivery.work = delivery_;
    }
    graph_.deliveries.push_back(delivery);
  }

  const job::Job& job_;
  const Loads& loads_;
  Sides sides_;
  std::size_t piece_;
  const job::OrderPiece& order_;
  TaskGraph& graph_;
  std::vector<std::pair<std::size_t, LoadWalk>> walks_;
  std::vector<std::pair<const job::OrderWork*, std::size_t>> later_;
  std::optional<std::size_t> delivery_;
};

/// What is of an order does not start before it.
void apply_start(const job::Job& job, TaskGraph& graph) {
  for (Task& task : graph.tasks) {
    if (!task.piece) continue;
    const std::optional<Instant>& start = job.order.pieces[*task.piece].start;
    if (start) task.not_before = std::max(*start, task.not_before.value_or(*start));
  }
}

}  // namespace

TaskGraph make_tasks(const job::Job& job, const Loads& loads, Mixings mixings, Sides sides, WoodCare wood) {
  TaskGraph graph;
  graph.mixings = std::move(mixings);
  graph.wood = std::move(wood);
  for (std::size_t p = 0; p < job.order.pieces.size(); ++p) PieceWalk(job, loads, sides, p, graph).run();
  bring_in_cans(job, graph);
  WorkWalk works(graph);
  for (const shop::Work& work : job.shop.work) works.add(work, std::nullopt, "");
  apply_history(job, graph);
  apply_start(job, graph);
  return graph;
}

}  // namespace coatday::planner
