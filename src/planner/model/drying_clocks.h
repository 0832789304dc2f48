#pragma once
// The clocks of all products in use, as instants and as functions on the grid. They run in the shop's air and in what lags behind it.

#include <map>
#include <memory>
#include <tuple>

#include "finish/clock.h"
#include "finish/conditions.h"
#include "planner/model/time_grid.h"
#include "planner/tasks/tasks.h"
#include "solver/base/problem.h"

namespace coatday::planner {

/// How the end of a wait comes onto the grid: up for a wait, down where a window closes.
enum class Rounding { up, down };

class Clocks {
 public:
  using Surfaces = std::map<Hours, climate::Surface>;
  /// Air and surfaces have the same rows.
  Clocks(const climate::AirSeries& air, const Surfaces& surfaces) : air_(air), surfaces_(surfaces) {}

  [[nodiscard]] const climate::AirSeries& air() const { return air_; }
  /// What a coat of this product meets on these bodies, of wood or else of steel.
  [[nodiscard]] finish::Conditions conditions(const finish::Product&, const job::TimeConstants&, bool on_wood) const;
  [[nodiscard]] finish::Conditions conditions(const Task& coat) const { return conditions(*coat.product, coat.bodies, coat.on_wood); }

  /// When the air allows this coat. All models of one plan share the answer.
  [[nodiscard]] const solver::Intervals& allowed(const Task& coat, const Mixing*, const Grid&);

  /// When a coat finished at `applied` reaches the stage.
  [[nodiscard]] std::optional<Instant> reached(const Task& coat, finish::Stage, Instant applied, finish::Estimate);
  [[nodiscard]] job::StageInstants stages(const Task& coat, Instant applied, finish::Estimate);
  /// When the wait after this task ends. After dry work only elapsed time and warming are possible.
  [[nodiscard]] std::optional<Instant> ends(const Wait&, const Task&, Instant end, finish::Estimate);

  /// Equal questions share one function.
  [[nodiscard]] solver::Function wait_function(const Grid&, const Wait&, const Task&, finish::Estimate, Rounding);

 private:
  using Question = std::tuple<const finish::Product*, job::TimeConstants, finish::DryingFactor, std::size_t, double, finish::Estimate,
                              Rounding>;  ///< what is waited for, by kind and value
  using Key = std::tuple<const finish::Product*, Hours, finish::Estimate>;
  [[nodiscard]] const finish::CureClock& clock(const finish::Product&, Hours body, finish::Estimate);
  [[nodiscard]] Instant warm(const WarmedUp&, Instant) const;

  const climate::AirSeries& air_;
  const Surfaces& surfaces_;
  std::map<Hours, finish::Integrals> integrals_;
  std::map<Key, std::unique_ptr<finish::CureClock>> clocks_;
  std::map<Question, solver::Function> functions_;
  std::map<std::tuple<const finish::Product*, job::TimeConstants, bool>, solver::Intervals> allowed_;
};

}  // namespace coatday::planner
