#pragma once
// What stands in the way of a sooner start, by name: who lies where until when, who is at work with what.

#include <optional>
#include <string>

#include "planner/model/model.h"
#include "solver/blockers.h"

namespace coatday::planner {

/// "clear 1 (top)"
[[nodiscard]] std::string name_with_load(const job::Event&);

/// Of the rules that fail, the one to name: a place, then hands, then what keeps off, then a limit of what follows.
[[nodiscard]] const solver::Blocker* first_of(const std::vector<solver::Blocker>&, const Model&);

struct Obstacle {
  std::string words;
  bool is_scarce = false;  ///< a place, hands or a tool that others have; not just dust, vapour or a shared set-up
};

class InTheWay {
 public:
  InTheWay(const job::Plan&, const TaskGraph&, const Model&, solver::Blockers&, const Grid&);

  /// What fails if the task starts then; nothing where it could.
  [[nodiscard]] std::optional<Obstacle> at(std::size_t task, solver::Time start);

 private:
  [[nodiscard]] std::string words(std::size_t task, solver::Time start, const solver::Blocker&) const;
  [[nodiscard]] std::string no_place(const solver::Blocker&, solver::Time start) const;
  [[nodiscard]] std::string no_hands(std::size_t task, const solver::Blocker&, solver::Time start) const;
  [[nodiscard]] std::string kept_off(std::size_t task, const solver::Blocker&, solver::Time start) const;
  [[nodiscard]] std::string vapour(const Task&, const solver::Blocker&) const;
  [[nodiscard]] bool is_scarce(const solver::Blocker&) const;
  [[nodiscard]] Obstacle has_to_follow(std::size_t task, solver::Time start, const solver::Blocker&);
  [[nodiscard]] std::string in_use(const char* what, const solver::Blocker&, solver::Time start) const;
  [[nodiscard]] const job::Event* event(int activity) const;
  [[nodiscard]] std::string name(int activity) const;
  [[nodiscard]] std::string names(const solver::Blocker&) const;
  [[nodiscard]] std::string when(solver::Time) const;

  const job::Plan& plan_;
  const TaskGraph& graph_;
  const Model& model_;
  solver::Blockers& blockers_;
  const Grid& grid_;
  std::map<std::string, const job::Event*> event_by_id_;
};

}  // namespace coatday::planner
