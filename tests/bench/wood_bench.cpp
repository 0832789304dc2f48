// The year of an order of 30 parts, hour by hour: air once, then each part with films of its own. Aim: under a second of processor time.

#include <benchmark/benchmark.h>

#include <cmath>

#include "climate/shop_air.h"
#include "wood/film.h"
#include "wood/warp.h"

namespace {

using namespace coatday;

/// A room whose air goes through days and seasons.
class Room final : public climate::AirSource {
 public:
  [[nodiscard]] climate::Air at(Instant t) const override {
    const double days = std::chrono::duration<double>(t - Instant{}).count() / 86'400;
    const double season = std::sin(2 * 3.14159265 * days / 365), day = std::sin(2 * 3.14159265 * days);
    return {Celsius(20 + 3 * season + day), RelativeHumidity(0.45 + 0.15 * season + 0.03 * day)};
  }
  [[nodiscard]] std::string describe(Units) const override { return "a room"; }
};

void year_of_thirty_parts(benchmark::State& state) {
  const Instant start{};
  const climate::AirSeries air(Room(), start, start + std::chrono::hours(24 * 365));
  const auto usual = wood::diffusion_across(wood::film_test_temperature).middle;
  for (auto _ : state) {
    const auto spans = wood::air_spans(air);
    for (int part = 0; part < 30; ++part) {
      const wood::Board board{Metres(0.015 + 0.001 * part), Metres(0.5), 0.003, MoistureContent(0.07)};
      const auto history = wood::warp_over(board, spans, {{start, wood::Side::face, wood::FilmResistance(1e8)}}, usual);
      benchmark::DoNotOptimize(wood::summary(history));
    }
  }
}
BENCHMARK(year_of_thirty_parts)->Unit(benchmark::kMillisecond);

void film_of_two_coats(benchmark::State& state) {
  const auto usual = wood::diffusion_across(wood::film_test_temperature).middle;
  for (auto _ : state) benchmark::DoNotOptimize(wood::film_of("Urethane varnish (oil-modified)", 2, usual));
}
BENCHMARK(film_of_two_coats)->Unit(benchmark::kMillisecond);

}  // namespace
