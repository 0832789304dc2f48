#include "solver/base/monotone_function.h"

#include <algorithm>
#include <utility>

namespace coatday::solver {

Time MonotoneFunction::latest(Time value, Time low, Time high) const {
  std::int64_t yes = std::int64_t{low} - 1;
  std::int64_t no = std::int64_t{high} + 1;
  // The difference to the argument varies slowly, so one place leads to the next. Every other step halves the range in any case.
  std::int64_t guess = 0;
  for (bool halve = true; no - yes > 1; halve = !halve) {
    const std::int64_t t = halve ? yes + (no - yes) / 2 : std::clamp(guess, yes + 1, no - 1);
    const std::int64_t reached = at(static_cast<Time>(t));
    (reached <= value ? yes : no) = t;
    guess = std::max<std::int64_t>(t + value - reached, yes + 1);
  }
  return static_cast<Time>(yes);
}

namespace {

class Shift final : public MonotoneFunction {
 public:
  explicit Shift(Time lag) : lag_(lag) {}
  [[nodiscard]] std::optional<Time> lag() const override { return lag_; }
  [[nodiscard]] Time at(Time t) const override {
    if (t >= unreachable) return unreachable;
    return static_cast<Time>(std::min<std::int64_t>(std::int64_t{t} + lag_, unreachable));
  }
  [[nodiscard]] Time latest(Time value, Time low, Time high) const override {
    if (value >= unreachable) return std::max(high, low - 1);
    const std::int64_t last = std::min<std::int64_t>(std::int64_t{value} - lag_, unreachable - 1);
    return static_cast<Time>(std::clamp<std::int64_t>(last, std::int64_t{low} - 1, std::max<std::int64_t>(high, std::int64_t{low} - 1)));
  }

 private:
  Time lag_;
};

class Table final : public MonotoneFunction {
 public:
  Table(Time first, std::vector<Time> values) : first_(first), values_(std::move(values)) {}
  [[nodiscard]] Time at(Time t) const override {
    const std::int64_t index = std::max<std::int64_t>(std::int64_t{t} - first_, 0);
    return index < static_cast<std::int64_t>(values_.size()) ? values_[static_cast<std::size_t>(index)] : unreachable;
  }
  [[nodiscard]] Time latest(Time value, Time low, Time high) const override {
    if (value >= unreachable) return std::max(high, low - 1);
    const auto above = std::upper_bound(values_.begin(), values_.end(), value) - values_.begin();
    if (above == 0) return low - 1;
    const std::int64_t last = first_ + above - 1;
    return static_cast<Time>(std::clamp<std::int64_t>(last, std::int64_t{low} - 1, std::max<std::int64_t>(high, std::int64_t{low} - 1)));
  }

 private:
  Time first_;
  std::vector<Time> values_;
};

class Composition final : public MonotoneFunction {
 public:
  Composition(Function outer, Function inner) : outer_(std::move(outer)), inner_(std::move(inner)) {}
  [[nodiscard]] Time at(Time t) const override { return outer_->at(inner_->at(t)); }
  [[nodiscard]] Time latest(Time value, Time low, Time high) const override {
    if (high < low) return low - 1;
    return inner_->latest(outer_->latest(value, inner_->at(low), inner_->at(high)), low, high);
  }

 private:
  Function outer_, inner_;
};

class Later final : public MonotoneFunction {
 public:
  Later(Function one, Function other) : one_(std::move(one)), other_(std::move(other)) {}
  [[nodiscard]] Time at(Time t) const override { return std::max(one_->at(t), other_->at(t)); }
  [[nodiscard]] Time latest(Time value, Time low, Time high) const override {
    return std::min(one_->latest(value, low, high), other_->latest(value, low, high));
  }

 private:
  Function one_, other_;
};

}  // namespace

std::optional<Time> constant_lag(const Function& f) { return f ? f->lag() : std::optional<Time>(0); }

Function shift(Time lag) { return std::make_shared<Shift>(lag); }
Function table(Time first, std::vector<Time> values) { return std::make_shared<Table>(first, std::move(values)); }
Function compose(Function outer, Function inner) { return std::make_shared<Composition>(std::move(outer), std::move(inner)); }
Function later_of(Function one, Function other) { return std::make_shared<Later>(std::move(one), std::move(other)); }

}  // namespace coatday::solver
