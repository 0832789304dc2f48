#pragma once
// The tasks of one load: what each of them takes. LoadWalk says who waits for whom.

#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "finish/coverage.h"
#include "planner/tasks/tasks.h"

namespace coatday::planner {

class LoadTasks {
 public:
  using StepId = job::StepId;

  LoadTasks(const job::Job& job, const Loads& loads, std::size_t load, const TaskGraph& graph)
      : job_(job),
        loads_(loads),
        index_(load),
        load_(loads.loads[load]),
        piece_id_(job.order.pieces[load_.piece].piece.id),
        graph_(graph) {}

  /// Somebody measures the moisture again once the wood is at rest. Nothing where no part has to rest, unless it is recorded.
  [[nodiscard]] std::optional<Task> measure() const;
  [[nodiscard]] Task dry(const finish::Step&, std::vector<std::size_t> faces) const;
  /// The coats of a face are counted in the order of these calls.
  [[nodiscard]] Task coat(const finish::Step&, const finish::Product&, const std::vector<std::size_t>& faces, StepId::Pass);
  /// A scuff before this coat, needed only where the window of a coat below was missed.
  [[nodiscard]] Task scuff(const finish::Step& coat, std::vector<std::size_t> faces) const;
  [[nodiscard]] Task turn(const finish::Step&, StepId::Kind) const;
  [[nodiscard]] bool wood() const { return loads_.faces[load_.faces.front()].wood; }

 private:
  [[nodiscard]] Task base_task(const finish::Step&, StepId::Pass = StepId::Pass::only, StepId::Kind = StepId::Kind::step) const;
  void add_effort(const finish::Step&, Task& coat) const;
  /// While all measured parts are at rest; nothing where none was measured.
  [[nodiscard]] std::optional<std::vector<RestSpan>> at_rest() const;
  [[nodiscard]] SquareMetres area(const std::vector<std::size_t>& faces) const;
  [[nodiscard]] job::TimeConstants bodies(const std::vector<std::size_t>& faces) const;
  /// Bare wood takes more of the first film, whatever without a film lies on it; of what leaves no film the first coat takes more.
  [[nodiscard]] std::vector<finish::Surface> surfaces(const finish::Product&, const std::vector<std::size_t>& faces) const;
  /// Two people sand one load when that takes one of them long: each at one end of it, or at pieces of their own.
  [[nodiscard]] std::optional<Crew> crew(Minutes alone) const;
  /// Dry work rests overnight only when one shift is too short for it.
  [[nodiscard]] Minutes shortest_shift() const;

  static constexpr Minutes long_work{60};  // common practice, no source

  const job::Job& job_;
  const Loads& loads_;
  std::size_t index_;
  const Load& load_;
  const std::string& piece_id_;
  const TaskGraph& graph_;
  std::set<std::size_t> coated_, filmed_;                      // faces
  std::map<std::pair<std::size_t, std::string>, int> counts_;  // coats so far, by face and product
};

}  // namespace coatday::planner
