#pragma once
// What is done already, as the order records it.

#include <vector>

#include "planner/tasks/tasks.h"

namespace coatday::planner {

/// A step that is recorded as done, of the items that its load had then.
class RecordedStep {
 public:
  explicit RecordedStep(const std::string& event);
  /// All that the task is about was done with it.
  [[nodiscard]] bool covers(const Task&) const;

 private:
  std::string event_;
  std::optional<job::StepId> id_;
  job::LoadItems items_;
};

/// Recorded tasks stay as they were. If something was carried in or turned before one of them, that is past, recorded or not.
void apply_history(const job::Job&, TaskGraph&);

/// A warning for each record that the plan does not have. An error for each with unrecorded work before it: a plan would have to sand below a
/// coat.
[[nodiscard]] std::vector<job::Finding> validate_history(const job::Job&, const TaskGraph&);

/// An error for each work of an order that has a fixed hour, which is over, and no record.
[[nodiscard]] std::vector<job::Finding> work_whose_hour_is_over(const job::Job&, const TaskGraph&, Instant from);

}  // namespace coatday::planner
