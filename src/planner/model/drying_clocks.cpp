#include "planner/model/drying_clocks.h"

#include <algorithm>
#include <utility>

#include "planner/model/start_calendar.h"

namespace coatday::planner {

namespace {

/// A function of the grid that remembers what it was asked: a search asks for the same again and again.
class Remembering : public solver::MonotoneFunction {
 public:
  [[nodiscard]] solver::Time at(solver::Time t) const override {
    if (t < 0 || t > most_known) return asked(t);
    if (known_.size() <= static_cast<std::size_t>(t)) known_.resize(static_cast<std::size_t>(t) + 512, unknown);
    solver::Time& answer = known_[static_cast<std::size_t>(t)];
    if (answer == unknown) answer = asked(t);
    return answer;
  }

 private:
  static constexpr solver::Time unknown = -solver::unreachable, most_known = 1 << 20;
  [[nodiscard]] virtual solver::Time asked(solver::Time) const = 0;

  mutable std::vector<solver::Time> known_;  // by t
};

/// A clock's stage or a drying wait.
class ClockFunction final : public Remembering {
 public:
  ClockFunction(Clocks& clocks, const Grid& grid, Wait wait, const Task& coat, finish::Estimate estimate, Rounding rounding)
      : clocks_(clocks), grid_(grid), wait_(std::move(wait)), estimate_(estimate), rounding_(rounding) {
    coat_.product = coat.product;
    coat_.bodies = coat.bodies;
    coat_.drying = coat.drying;
  }

 private:
  [[nodiscard]] solver::Time asked(solver::Time t) const override {
    const Instant applied = grid_.instant(t);
    if (applied >= clocks_.air().end()) return solver::unreachable;
    const auto end = clocks_.ends(wait_, coat_, applied, estimate_);
    if (!end) return solver::unreachable;
    return rounding_ == Rounding::up ? grid_.up(*end) : grid_.down(*end);
  }

  Clocks& clocks_;
  Grid grid_;
  Wait wait_;
  Task coat_;  // the task asked about may be gone
  finish::Estimate estimate_;
  Rounding rounding_;
};

/// What is carried in later is not warm sooner: where the room would have it so, as it warms, the latest of what was carried in before counts.
class WarmingFunction final : public solver::MonotoneFunction {
 public:
  WarmingFunction(Clocks& clocks, const Grid& grid, Wait wait) : clocks_(clocks), grid_(grid), wait_(std::move(wait)) {}

  [[nodiscard]] solver::Time at(solver::Time t) const override {
    if (t < 0) return asked(t);
    for (auto next = static_cast<solver::Time>(latest_.size()); next <= t; ++next) {
      if (grid_.instant(next) >= clocks_.air().end()) return solver::unreachable;
      latest_.push_back(std::max(asked(next), latest_.empty() ? 0 : latest_.back()));
    }
    return latest_[static_cast<std::size_t>(t)];
  }

 private:
  [[nodiscard]] solver::Time asked(solver::Time t) const {
    return grid_.up(*clocks_.ends(wait_, Task{}, grid_.instant(t), finish::Estimate::expected));
  }

  mutable std::vector<solver::Time> latest_;  // by t
  Clocks& clocks_;
  Grid grid_;
  Wait wait_;
};

}  // namespace

finish::Conditions Clocks::conditions(const finish::Product& product, const job::TimeConstants& bodies, bool on_wood) const {
  finish::Conditions met(air_);
  for (const Hours body : bodies) {
    if (body > Hours(0)) met.surfaces.push_back({on_wood ? "the wood" : "the steel", &surfaces_.at(body).air()});
  }
  met.can = &surfaces_.at(finish::can_time_constant(product)).air();
  return met;
}

const finish::CureClock& Clocks::clock(const finish::Product& product, Hours body, finish::Estimate estimate) {
  std::unique_ptr<finish::CureClock>& clock = clocks_[{&product, body, estimate}];
  if (!clock) {
    const climate::AirSeries& air = body > Hours(0) ? surfaces_.at(body).air() : air_;
    clock = std::make_unique<finish::CureClock>(product, integrals_.try_emplace(body, air).first->second, estimate);
  }
  return *clock;
}

const solver::Intervals& Clocks::allowed(const Task& coat, const Mixing* mixing, const Grid& grid) {
  const auto [known, fresh] = allowed_.try_emplace({coat.product, coat.bodies, coat.on_wood});
  if (fresh) known->second = air_allows(*coat.product, mixing, conditions(coat), grid);
  return known->second;
}

std::optional<Instant> Clocks::reached(const Task& coat, finish::Stage stage, Instant applied, finish::Estimate estimate) {
  const bool closes = stage == finish::Stage::recoat_close;
  std::optional<Instant> result;
  for (const Hours body : coat.bodies) {
    const std::optional<Instant> here = clock(*coat.product, body, estimate).reached(stage, applied, coat.drying.on(estimate));
    if (!here && !closes) return std::nullopt;
    if (here) result = !result ? *here : closes ? std::min(*result, *here) : std::max(*result, *here);
  }
  return result;
}

job::StageInstants Clocks::stages(const Task& coat, Instant applied, finish::Estimate estimate) {
  job::StageInstants result;
  for (std::size_t s = 0; s < finish::stage_count; ++s) {
    const auto stage = static_cast<finish::Stage>(s);
    result[stage] = reached(coat, stage, applied, estimate);
  }
  return result;
}

Instant Clocks::warm(const WarmedUp& wait, Instant carried_in) const {
  Instant result = carried_in;
  for (const Hours body : wait.bodies) {
    if (body > Hours(0)) result = std::max(result, surfaces_.at(body).warm(carried_in, wait.from));
  }
  return result;
}

std::optional<Instant> Clocks::ends(const Wait& wait, const Task& task, Instant end, finish::Estimate estimate) {
  if (const auto* elapsed = std::get_if<Elapsed>(&wait)) return later(end, elapsed->hours);
  if (const auto* warmed = std::get_if<WarmedUp>(&wait)) return warm(*warmed, end);
  if (task.product == nullptr) return end;
  if (const auto* stage = std::get_if<StageOf>(&wait)) return reached(task, stage->stage, end, estimate);
  Instant latest = end;
  for (const Hours body : task.bodies) {
    const auto dried = clock(*task.product, body, estimate).dried(std::get<Dried>(wait).need * task.drying.on(estimate), end);
    if (!dried) return std::nullopt;
    latest = std::max(latest, *dried);
  }
  return latest;
}

solver::Function Clocks::wait_function(const Grid& grid, const Wait& wait, const Task& task, finish::Estimate estimate, Rounding rounding) {
  if (const auto* elapsed = std::get_if<Elapsed>(&wait)) {
    return solver::shift(rounding == Rounding::up ? Grid::steps(elapsed->hours) : Grid::steps_within(elapsed->hours));
  }
  if (const auto* warmed = std::get_if<WarmedUp>(&wait)) {
    solver::Function& known = functions_[{nullptr, warmed->bodies, {}, wait.index(), warmed->from.value(), estimate, rounding}];
    if (!known) known = std::make_shared<WarmingFunction>(*this, grid, wait);
    return known;
  }
  const auto* stage = std::get_if<StageOf>(&wait);
  const double what = stage != nullptr ? static_cast<double>(stage->stage) : std::get<Dried>(wait).need.count();
  solver::Function& known = functions_[{task.product, task.bodies, task.drying, wait.index(), what, estimate, rounding}];
  if (!known) known = std::make_shared<ClockFunction>(*this, grid, wait, task, estimate, rounding);
  return known;
}

}  // namespace coatday::planner
