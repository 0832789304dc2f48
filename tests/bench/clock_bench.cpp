// A year of hours and 10 000 coats: every stage of each, by a running sum made once for each law.

#include <benchmark/benchmark.h>

#include <cmath>

#include "finish/clock.h"

namespace {

using namespace coatday;

constexpr Instant new_year{std::chrono::sys_days(std::chrono::days(20454))};

/// Seasons and days, each hour unlike the one before.
class Year final : public climate::AirSource {
 public:
  [[nodiscard]] climate::Air at(Instant t) const override {
    const double hours = Hours(t - new_year).count();
    return {Celsius(19 - 3 * std::cos(hours / 1394) + 2 * std::sin(hours / 3.8)), RelativeHumidity(0.5 + 0.15 * std::cos(hours / 40))};
  }
  [[nodiscard]] std::string describe(Units) const override { return "a made-up year"; }
};

finish::Product product(finish::Mechanism mechanism) {
  finish::Product p;
  p.mechanism = mechanism;
  finish::StageHours hours;
  hours.values = {Hours(1), Hours(12), Hours(4), Hours(4), Hours(24), Hours(48), Hours(168), Hours(720)};
  p.rows = {{finish::reference_air, hours}};
  return p;
}

void year_of_coats(benchmark::State& state) {
  const finish::Product p = product(static_cast<finish::Mechanism>(state.range(0)));
  const climate::AirSeries air(Year(), new_year, new_year + std::chrono::hours(24 * 365));
  std::size_t reached = 0;
  for (auto _ : state) {
    const finish::CureClock clock(p, air, finish::Estimate::slow);
    for (int coat = 0; coat < 10'000; ++coat) {
      const Instant applied = new_year + std::chrono::seconds(static_cast<long>(coat) * 2600);
      for (std::size_t s = 0; s < finish::stage_count; ++s) reached += clock.reached(static_cast<finish::Stage>(s), applied) ? 1U : 0U;
    }
  }
  state.counters["stages"] = static_cast<double>(reached) / static_cast<double>(state.iterations());
}
BENCHMARK(year_of_coats)
    ->Arg(static_cast<int>(finish::Mechanism::water))
    ->Arg(static_cast<int>(finish::Mechanism::oxidative))
    ->Unit(benchmark::kMillisecond);

}  // namespace
