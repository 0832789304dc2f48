#pragma once
// The clocks of all products in use over the shop's air and what lags behind it, as instants and as functions on the grid.

#include <map>
#include <memory>
#include <tuple>

#include "finish/clock.h"
#include "planner/model/time_grid.h"
#include "planner/tasks/tasks.h"
#include "solver/base/problem.h"

namespace coatday::planner {

/// The end of a wait as a function of the coat's end: rounded up for a wait, down for a window's close.
enum class Rounding { up, down };

class Clocks {
 public:
  using Surfaces = std::map<Hours, climate::Surface>;
  /// All of them over the same rows.
  Clocks(const climate::AirSeries& air, const Surfaces& surfaces) : air_(air), surfaces_(surfaces) {}

  [[nodiscard]] const climate::AirSeries& air() const { return air_; }
  /// What a coat of this product meets on these bodies, of wood or else of steel.
  [[nodiscard]] finish::Conditions conditions(const finish::Product&, const job::Bodies&, bool on_wood) const;
  [[nodiscard]] finish::Conditions conditions(const Task& coat) const { return conditions(*coat.product, coat.bodies, coat.on_wood); }

  /// When its air allows this coat, the same for all models of one plan.
  [[nodiscard]] const solver::Intervals& allowed(const Task& coat, const Mixing*, const Grid&);

  /// When a coat finished at `applied` reaches the stage.
  [[nodiscard]] std::optional<Instant> reached(const Task& coat, finish::Stage, Instant applied, finish::Estimate);
  [[nodiscard]] job::StageInstants stages(const Task& coat, Instant applied, finish::Estimate);
  /// When the wait after this task ends; after dry work, elapsed time and warming only.
  [[nodiscard]] std::optional<Instant> ends(const Wait&, const Task&, Instant end, finish::Estimate);

  /// One for all that ask the same.
  [[nodiscard]] solver::Function wait_function(const Grid&, const Wait&, const Task&, finish::Estimate, Rounding);

 private:
  using Question = std::tuple<const finish::Product*, job::Bodies, finish::DryingFactor, std::size_t, double, finish::Estimate,
                              Rounding>;  ///< what is waited for, by kind and value
  using Key = std::tuple<const finish::Product*, Hours, finish::Estimate>;
  [[nodiscard]] const finish::CureClock& clock(const finish::Product&, Hours body, finish::Estimate);
  [[nodiscard]] Instant warm(const WarmedUp&, Instant) const;

  const climate::AirSeries& air_;
  const Surfaces& surfaces_;
  std::map<Hours, finish::Integrals> integrals_;
  std::map<Key, std::unique_ptr<finish::CureClock>> clocks_;
  std::map<Question, solver::Function> functions_;
  std::map<std::tuple<const finish::Product*, job::Bodies, bool>, solver::Intervals> allowed_;
};

}  // namespace coatday::planner
