#pragma once
// Nondecreasing functions of time on an integer grid. They make reasoning on bounds exact: s >= a implies f(s) >= f(a).

#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

namespace coatday::solver {

using Time = std::int32_t;                          ///< grid steps from the problem's origin; negative in the past
inline constexpr Time unreachable = 1'000'000'000;  ///< later than every horizon

/// f(a) <= f(b) for all a <= b. May return `unreachable` from some t on.
class MonotoneFunction {
 public:
  virtual ~MonotoneFunction() = default;
  [[nodiscard]] virtual Time at(Time t) const = 0;
  /// The latest t in [low, high] with at(t) <= value, or low - 1 if there is none. By bisection unless overridden.
  [[nodiscard]] virtual Time latest(Time value, Time low, Time high) const;
  /// The lag, if at(t) is t + lag for all t and the function knows it.
  [[nodiscard]] virtual std::optional<Time> lag() const { return std::nullopt; }
};
using Function = std::shared_ptr<const MonotoneFunction>;

/// t + lag; `unreachable` stays `unreachable`.
[[nodiscard]] Function shift(Time lag);
/// values[t - first] within the table, with nondecreasing values. Before the table the first value, after it `unreachable`.
[[nodiscard]] Function table(Time first, std::vector<Time> values);
/// outer(inner(t)).
[[nodiscard]] Function compose(Function outer, Function inner);
/// The later of two.
[[nodiscard]] Function later_of(Function, Function);
/// The lag of a shift(), and 0 of a null function. Returns nothing for any other function.
[[nodiscard]] std::optional<Time> constant_lag(const Function&);

}  // namespace coatday::solver
