#pragma once
// The clocks of all products in use over the shop's air, as instants and as functions on the grid.

#include <map>
#include <memory>
#include <tuple>

#include "finish/clock.h"
#include "plan/make/grid.h"
#include "plan/make/task.h"

namespace coatday::plan {

/// The end of a wait as a function of the coat's end: rounded up for a wait, down for a window's close.
enum class Rounding { up, down };

class Clocks {
 public:
  explicit Clocks(const climate::AirSeries& air) : integrals_(air) {}

  [[nodiscard]] const climate::AirSeries& air() const { return integrals_.air(); }
  [[nodiscard]] const finish::CureClock& of(const finish::Product&, finish::Estimate);
  /// All stages of a coat finished at `applied`.
  [[nodiscard]] StageInstants stages(const finish::Product&, Instant applied, finish::Estimate);
  /// When the wait after a coat of this product (null: dry work, elapsed time only) ends.
  [[nodiscard]] std::optional<Instant> ends(const Wait&, const finish::Product*, Instant applied, finish::Estimate);

  /// One for all that ask the same.
  [[nodiscard]] solver::Function wait_function(const Grid&, const Wait&, const finish::Product*, finish::Estimate, Rounding);

 private:
  using Question = std::tuple<const finish::Product*, std::size_t, double, finish::Estimate,
                              Rounding>;  ///< what is waited for, by kind and value
  using Key = std::pair<const finish::Product*, finish::Estimate>;
  finish::Integrals integrals_;
  std::map<Key, std::unique_ptr<finish::CureClock>> clocks_;
  std::map<Question, solver::Function> functions_;
};

}  // namespace coatday::plan
