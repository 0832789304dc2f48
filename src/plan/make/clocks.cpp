#include "plan/make/clocks.h"

namespace coatday::plan {

namespace {

/// A clock's stage or a drying wait, seen from the grid.
class ClockFunction final : public solver::Monotone {
 public:
  ClockFunction(Clocks& clocks, const Grid& grid, Wait wait, const finish::Product* product, finish::Estimate estimate, Rounding rounding)
      : clocks_(clocks), grid_(grid), wait_(wait), product_(product), estimate_(estimate), rounding_(rounding) {}

  [[nodiscard]] solver::Time at(solver::Time t) const override {
    if (t < 0 || t > most_known) return asked(t);
    if (known_.size() <= static_cast<std::size_t>(t)) known_.resize(static_cast<std::size_t>(t) + 512, unknown);
    solver::Time& answer = known_[static_cast<std::size_t>(t)];
    if (answer == unknown) answer = asked(t);
    return answer;
  }

 private:
  static constexpr solver::Time unknown = -solver::never, most_known = 1 << 20;

  [[nodiscard]] solver::Time asked(solver::Time t) const {
    const Instant applied = grid_.instant(t);
    if (applied >= clocks_.air().end()) return solver::never;
    const auto end = clocks_.ends(wait_, product_, applied, estimate_);
    if (!end) return solver::never;
    return rounding_ == Rounding::up ? grid_.up(*end) : grid_.down(*end);
  }

  mutable std::vector<solver::Time> known_;  // by t: a search asks for the same again and again
  Clocks& clocks_;
  Grid grid_;
  Wait wait_;
  const finish::Product* product_;
  finish::Estimate estimate_;
  Rounding rounding_;
};

}  // namespace

const finish::CureClock& Clocks::of(const finish::Product& product, finish::Estimate estimate) {
  std::unique_ptr<finish::CureClock>& clock = clocks_[{&product, estimate}];
  if (!clock) clock = std::make_unique<finish::CureClock>(product, integrals_, estimate);
  return *clock;
}

StageInstants Clocks::stages(const finish::Product& product, Instant applied, finish::Estimate estimate) {
  StageInstants result;
  for (std::size_t s = 0; s < finish::stage_count; ++s) {
    const auto stage = static_cast<finish::Stage>(s);
    result[stage] = of(product, estimate).reached(stage, applied);
  }
  return result;
}

std::optional<Instant> Clocks::ends(const Wait& wait, const finish::Product* product, Instant applied, finish::Estimate estimate) {
  if (const auto* elapsed = std::get_if<Elapsed>(&wait)) return later(applied, elapsed->hours);
  if (product == nullptr) return applied;
  if (const auto* stage = std::get_if<StageOf>(&wait)) return of(*product, estimate).reached(stage->stage, applied);
  return of(*product, estimate).dried(std::get<Dried>(wait).need, applied);
}

solver::Function Clocks::wait_function(const Grid& grid, const Wait& wait, const finish::Product* product, finish::Estimate estimate,
                                       Rounding rounding) {
  if (const auto* elapsed = std::get_if<Elapsed>(&wait)) return solver::shift(Grid::steps(elapsed->hours));
  const auto* stage = std::get_if<StageOf>(&wait);
  const double what = stage != nullptr ? static_cast<double>(stage->stage) : std::get<Dried>(wait).need.count();
  solver::Function& known = functions_[{product, wait.index(), what, estimate, rounding}];
  if (!known) known = std::make_shared<ClockFunction>(*this, grid, wait, product, estimate, rounding);
  return known;
}

}  // namespace coatday::plan
