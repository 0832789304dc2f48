#include "planner/tasks/carry_in.h"

#include <algorithm>
#include <map>

#include <fmt/core.h>

#include "finish/conditions.h"
#include "job/time_step.h"
#include "piece/heat.h"

namespace coatday::planner {

namespace {

Task bringing(job::StepId of, std::string name, Hours hands_on) {
  Task task;
  of.kind = job::StepId::Kind::carry_in;
  task.identify(std::move(of));
  task.kind = job::EventKind::prepare;
  task.name = std::move(name);
  task.hands_on = job::in_whole_steps(hands_on);
  task.carries_in = true;
  return task;
}

/// What was kept at one temperature.
struct Cold {
  job::TimeConstants bodies;
  Metres thickest;
  bool wood = true;
};

}  // namespace

std::optional<CarriedIn> carry_in(const job::Job& job, const Loads& loads, std::size_t l, TaskGraph& graph) {
  const Load& load = loads.loads[l];
  int items = 0;
  std::map<Celsius, Cold> colds;
  for (const LoadPart& of : load.parts) {
    const piece::Part& part = job.order.pieces[load.piece].piece.parts[of.part];
    if (!part.kept_at) continue;
    items += of.count;
    Cold& cold = colds[*part.kept_at];
    cold.bodies.push_back(piece::time_constant(part));
    cold.thickest = std::max(cold.thickest, piece::section(part.shape).thickness);
    cold.wood = part.wood();
  }
  if (items == 0) return std::nullopt;
  Task task = bringing({job.order.pieces[load.piece].piece.id, load.id, ""}, "carry in and warm up", Hours(job.shop.handling) * items);
  task.piece = load.piece;
  task.load = l;
  task.people = load.turning_people;
  graph.tasks.push_back(std::move(task));
  CarriedIn result{graph.tasks.size() - 1, {}};
  const Units units = job.shop.units;
  for (const auto& [from, cold] : colds) {
    result.warming.push_back({0, result.task, WarmedUp{from, cold.bodies}, false,
                              fmt::format("{} {} thick from {} warms up", cold.wood ? "wood" : "steel", format_length(cold.thickest, units),
                                          format_temperature(from, units))});
  }
  return result;
}

void bring_in_cans(const job::Job& job, TaskGraph& graph) {
  const auto& kept_at = job.shop.finishes_kept_at;
  if (!kept_at) return;
  std::map<const finish::Product*, std::size_t> brought;
  const std::size_t tasks = graph.tasks.size();
  for (std::size_t t = 0; t < tasks; ++t) {
    const finish::Product* product = graph.tasks[t].product;
    if (product == nullptr) continue;
    const auto [can, fresh] = brought.try_emplace(product, graph.tasks.size());
    if (fresh) {
      graph.tasks.push_back(bringing({"", "", product->id}, "bring in the can of " + product->name, Hours(job.shop.handling)));
    }
    graph.after.push_back({t, can->second, WarmedUp{*kept_at, {finish::can_time_constant(*product)}}, false,
                           fmt::format("the can from {} warms up", format_temperature(*kept_at, job.shop.units))});
  }
}

}  // namespace coatday::planner
