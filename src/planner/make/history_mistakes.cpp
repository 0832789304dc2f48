#include "planner/make/history_mistakes.h"

#include <algorithm>
#include <map>
#include <set>
#include <string>

#include <fmt/core.h>

#include "planner/make/variants.h"
#include "planner/tasks/history.h"
#include "quantity/nearest.h"

namespace coatday::planner {
namespace {

class HistoryCheck {
 public:
  HistoryCheck(const job::Job& job, TaskGraph graph) : job_(job), graph_(std::move(graph)) {
    for (const After& after : graph_.after) before_.emplace(after.task, after.other);
  }

  std::vector<job::Finding> run() {
    std::map<std::string, const job::Done*> seen;
    for (const job::Done& done : job_.order.history) {
      if (done.event.empty()) continue;
      const auto [first, fresh] = seen.emplace(done.event, &done);
      if (!fresh) {
        say(done, fmt::format("'{}' is recorded twice; the first time is in line {}", done.event, first->second->where.line));
      } else if (note(done)) {
        continue;
      } else {
        say(done, unknown(done.event));
      }
    }
    for (const auto& [task, done] : done_) in_turn(task, *done);
    return std::move(findings_);
  }

 private:
  /// Of every task that it covers; false where it covers none.
  bool note(const job::Done& done) {
    const RecordedStep recorded(done.event);
    bool any = false;
    for (std::size_t t = 0; t < graph_.tasks.size(); ++t) {
      if (!recorded.covers(graph_.tasks[t])) continue;
      done_.emplace(t, &done);
      any = true;
    }
    return any;
  }

  void say(const job::Done& done, std::string message) {
    findings_.push_back({"history-mistake", job::Severity::error, std::move(message), done.event, done.where});
  }

  static std::string meant(const std::string& event, const std::string& known) {
    return fmt::format("unknown event '{}'; did you mean '{}'?", event, known);
  }

  [[nodiscard]] std::string unknown(const std::string& event) const {
    std::vector<std::string> all;
    for (const Task& task : graph_.tasks) {
      const bool a_side = task.step_id.kind == job::StepId::Kind::step && task.id.starts_with(event + "/");
      if (a_side) return meant(event, task.id);
      if (!task.milestone) all.push_back(task.id);
    }
    return meant(event, nearest_words(event, all, 1).front());
  }

  /// What is recorded nearest before a task has ended when it begins. What lies between them may be missing.
  void in_turn(std::size_t task, const job::Done& done) {
    std::vector<std::size_t> open{task};
    std::set<std::size_t> reached{task};
    while (!open.empty()) {
      const auto [first, last] = before_.equal_range(open.back());
      open.pop_back();
      for (auto it = first; it != last; ++it) {
        if (!reached.insert(it->second).second) continue;
        const auto earlier = done_.find(it->second);
        if (earlier == done_.end()) {
          open.push_back(it->second);
        } else if (done.start < earlier->second->end) {
          say(done, fmt::format("'{}' begins before '{}' ends, which it follows", done.event, earlier->second->event));
          return;
        }
      }
    }
  }

  const job::Job& job_;
  TaskGraph graph_;
  std::multimap<std::size_t, std::size_t> before_;
  std::map<std::size_t, const job::Done*> done_;
  std::vector<job::Finding> findings_;
};

}  // namespace

std::vector<job::Finding> history_mistakes(const job::Job& job) {
  if (job.order.history.empty()) return {};
  const Variant variant = begun_variant(job, {});
  const Loads loads = make_loads(job, variant.batching);
  return HistoryCheck(job, make_tasks(job, loads, {}, variant.sides)).run();
}

}  // namespace coatday::planner
