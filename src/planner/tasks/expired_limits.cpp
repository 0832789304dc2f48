#include "planner/tasks/expired_limits.h"

#include <algorithm>

#include <fmt/core.h>

namespace coatday::planner {

namespace {

/// When the limit ends; nothing where it does not begin with what is done, or is not one that may be missed.
std::optional<Instant> ends(const TaskGraph& graph, const Before& before) {
  const Task& other = graph.tasks[before.other];
  const auto* limit = std::get_if<Elapsed>(&before.limit);
  if (limit == nullptr || before.remedy || !other.done || graph.tasks[before.task].done) return std::nullopt;
  return later(other.done->end, limit->hours);
}

}  // namespace

std::vector<Before> remove_expired_limits(TaskGraph& graph, std::optional<Instant> from) {
  const auto kept = std::stable_partition(graph.before.begin(), graph.before.end(), [&](const Before& before) {
    const auto end = ends(graph, before);
    return !end || (from && *end >= *from);
  });
  std::vector<Before> taken(kept, graph.before.end());
  graph.before.erase(kept, graph.before.end());
  return taken;
}

std::vector<job::Finding> missed_limits(const std::vector<Before>& limits, const TaskGraph& graph, const std::vector<job::Event>& events) {
  std::vector<job::Finding> result;
  for (const Before& limit : limits) {
    const Task& task = graph.tasks[limit.task];
    const Instant done = graph.tasks[limit.other].done->end;
    const auto event = std::find_if(events.begin(), events.end(), [&](const job::Event& e) { return e.id == task.id; });
    if (event == events.end() || event->start <= *ends(graph, limit)) continue;
    result.push_back({"limit-missed", job::Severity::warning,
                      fmt::format("{}: it is {} now, since what comes before is already done; look at it before going on", limit.reason,
                                  format_span(event->start - done)),
                      task.id, graph.tasks[limit.other].done->where});
  }
  return result;
}

}  // namespace coatday::planner
