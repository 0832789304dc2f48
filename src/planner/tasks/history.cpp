#include "planner/tasks/history.h"

#include <algorithm>
#include <map>
#include <set>

#include <fmt/format.h>

#include "planner/tasks/vapour.h"

namespace coatday::planner {
namespace {

bool only_moves(const Task& task) { return task.carries_in || task.kind == job::EventKind::turn; }

/// The work that has to come before a task and is not recorded, by id, as far as it is not `seen` yet.
void gather_unrecorded(const TaskGraph& graph, const std::multimap<std::size_t, std::size_t>& before, std::size_t task,
                       std::vector<bool>& seen, std::vector<std::string>& ids) {
  const auto [first, last] = before.equal_range(task);
  for (auto it = first; it != last; ++it) {
    const Task& other = graph.tasks[it->second];
    if (seen[it->second]) continue;
    seen[it->second] = true;
    gather_unrecorded(graph, before, it->second, seen, ids);
    if (!other.done && !other.optional && !other.milestone && !only_moves(other)) ids.push_back(other.id);
  }
}

void stand(Task& task, const job::Done& done) {
  task.done = done;
  if (!task.vapour) return;
  const Hours at_it = Hours(done.end - done.start) - task.set_up - task.clean_up - task.stand.value_or(Hours(0));
  task.vapour->airflow = airflow_within(*task.vapour, at_it);
  task.vapour->pauses = Minutes(0);
}

}  // namespace

RecordedStep::RecordedStep(const std::string& event) : event_(event), id_(job::parse_step_id(event)) {
  if (id_) items_ = job::items_of(id_->load);
}

bool RecordedStep::covers(const Task& task) const {
  if (task.id == event_) return true;
  if (!id_ || !task.load || id_->load.empty()) return false;
  job::StepId same = task.step_id;
  same.load = id_->load;
  return same == *id_ && job::within(job::items_of(task.step_id.load), items_);
}

void apply_history(const job::Job& job, TaskGraph& graph) {
  for (const job::Done& done : job.order.history) {
    const RecordedStep recorded(done.event);
    for (Task& task : graph.tasks)
      if (recorded.covers(task)) stand(task, done);
  }
  for (const After& after : graph.after) {
    Task& before = graph.tasks[after.other];
    if (graph.tasks[after.task].done && only_moves(before)) before.optional = true;
  }
  std::set<std::size_t> begun;  // loads: nobody asks any more whether their wood is at rest
  for (const Task& task : graph.tasks) {
    if (task.load && task.done && task.step_id.kind != job::StepId::Kind::carry_in) begun.insert(*task.load);
  }
  for (Task& task : graph.tasks) {
    if (task.load && begun.contains(*task.load)) task.at_rest.reset();
  }
}

std::vector<job::Finding> validate_history(const job::Job& job, const TaskGraph& graph) {
  std::multimap<std::size_t, std::size_t> before;
  for (const After& after : graph.after) before.emplace(after.task, after.other);
  std::vector<bool> seen(graph.tasks.size());  // each gap is reported once
  std::vector<job::Finding> findings;
  for (const job::Done& done : job.order.history) {
    const RecordedStep recorded(done.event);
    const auto task = std::find_if(graph.tasks.begin(), graph.tasks.end(), [&](const Task& t) { return recorded.covers(t); });
    if (task == graph.tasks.end()) {
      findings.push_back({"unknown-event", job::Severity::warning, "the history names an event that this plan does not have: " + done.event,
                          done.event, done.where});
      continue;
    }
    std::vector<std::string> missing;
    gather_unrecorded(graph, before, static_cast<std::size_t>(task - graph.tasks.begin()), seen, missing);
    if (missing.empty()) continue;
    findings.push_back({"history-gap", job::Severity::error,
                        fmt::format("the history has {}, but not what comes before it: {}; record when that was done, too", done.event,
                                    fmt::join(missing, ", ")),
                        done.event, done.where});
  }
  return findings;
}

std::vector<job::Finding> work_whose_hour_is_over(const job::Job& job, const TaskGraph& graph, Instant from) {
  std::vector<job::Finding> findings;
  for (const Task& task : graph.tasks) {
    if (!task.piece || !task.fixed_start || task.done || *task.fixed_start >= from) continue;
    const std::vector<job::OrderWork>& all = job.order.pieces[*task.piece].work;
    const auto of_task = [&task](const job::OrderWork& one) { return one.work.id == task.step_id.step; };
    const auto work = std::find_if(all.begin(), all.end(), of_task);
    findings.push_back({"hour-is-over", job::Severity::error,
                        fmt::format("{} was to start at {}, before this plan begins; record it in the history, or give it a later start",
                                    task.name, day_and_time(job.shop.zone.to_local(*task.fixed_start))),
                        task.id, work == all.end() ? Location{} : work->work.where});
  }
  return findings;
}

}  // namespace coatday::planner
