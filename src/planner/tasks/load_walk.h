#pragma once
// The steps of one load in order, and who waits for whom between them.

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "planner/tasks/carry_in.h"
#include "planner/tasks/load_tasks.h"

namespace coatday::planner {

class LoadWalk {
 public:
  LoadWalk(const job::Job& job, const Loads& loads, Sides sides, std::size_t load, TaskGraph& graph)
      : job_(job),
        loads_(loads),
        index_(load),
        load_(loads.loads[load]),
        graph_(graph),
        tasks_(job, loads, load, graph),
        order_(sides == Sides::hidden_first ? std::array<std::size_t, 2>{hidden, show} : std::array<std::size_t, 2>{show, hidden}),
        films_(loads.faces.size(), 0) {}

  void run();

  [[nodiscard]] const std::vector<std::size_t>& first_tasks() const { return first_; }
  [[nodiscard]] const std::vector<std::size_t>& last_tasks() const { return previous_; }
  [[nodiscard]] const std::vector<std::size_t>& coats() const { return coats_; }
  [[nodiscard]] const std::vector<std::size_t>& open_holds() const { return closed_holds_; }

 private:
  /// What a side of the load carries so far.
  struct SideState {
    std::optional<std::size_t> coat;  // the last coat's task
    bool abraded = true;              // since that coat
  };

  std::size_t add(Task task);
  void after(std::size_t task, std::size_t other, Wait wait, std::string reason);
  /// The task waits for every task of the step before, plus the step's own wait. The load may not lie too long in between.
  void chain(std::size_t task, const finish::Step& step);
  /// Nobody works on wood that is not at rest before it is measured again.
  void rest();
  void warm_enough(std::size_t coat);
  void dry_step(const finish::Step& step);
  using Passes = std::array<std::vector<std::size_t>, 2>;  // faces, by hidden and show
  [[nodiscard]] Passes passes_of(const finish::Step&, const finish::Product&);
  std::array<std::optional<Task>, 2> coats_of(const finish::Step&, const finish::Product&, const Passes&);
  void coat_step(const finish::Step& step, const finish::Product& product);
  [[nodiscard]] bool is_recorded(const Task&) const;
  void coated(const Passes&, std::vector<std::size_t> done);
  /// The same id always stands for the same faces.
  [[nodiscard]] job::StepId::Pass name_of(std::size_t pass) const;
  /// Waits for, and windows of, the coat below on this side.
  void over_what_lies_below(const finish::Step& step, const finish::Product& product, std::size_t id, std::size_t pass,
                            std::optional<std::size_t> remedy);
  /// A scuff that is done only when the window of a coat below is missed.
  std::optional<std::size_t> remedy_scuff(const finish::Step& step, const Passes& passes);
  /// The side that was coated last must bear the turn: tack-free on points, dry to handle when laid flat.
  std::size_t turn(const finish::Step& step, job::StepId::Kind kind, std::size_t wet_pass);
  /// The task of turning the load.
  std::size_t second_side(const finish::Step& step, std::size_t first, std::size_t second);
  /// The shop's own limit, or less where a board would cup too much with one face coated.
  [[nodiscard]] Before both_faces(const finish::Step& step, std::size_t first, std::size_t second) const;
  void close_holds(std::optional<std::size_t> until);

  static constexpr std::size_t hidden = 0, show = 1;

  const job::Job& job_;
  const Loads& loads_;
  std::size_t index_;
  const Load& load_;
  TaskGraph& graph_;
  LoadTasks tasks_;
  std::array<std::size_t, 2> order_;
  std::array<SideState, 2> sides_;
  std::optional<CarriedIn> carried_in_;  // until its first coat
  std::optional<std::size_t> up_;        // the side that lies up, freshly coated
  std::vector<int> films_;
  std::vector<std::size_t> previous_, first_, coats_, open_holds_, closed_holds_;
};

}  // namespace coatday::planner
