#include "wood/warp.h"

#include <algorithm>
#include <cmath>

#include "wood/moisture.h"

namespace coatday::wood {

std::vector<AirSpan> air_spans(const climate::AirSeries& air, Minutes each) {
  const double at_test = diffusion_across(film_test_temperature).middle.value();
  std::vector<AirSpan> result;
  double rows = 0;
  for (const climate::AirRow& row : air.rows()) {
    const MoistureContent equilibrium = equilibrium_moisture(row.air);
    const double diffusion = diffusion_across(row.air.temperature).middle.value() / at_test, film = film_factor(row.air.temperature);
    const Instant until = row.from + climate::AirSeries::step;
    if (result.empty() || until - result.back().from > each) {
      result.push_back({row.from, until, equilibrium, diffusion, film});
      rows = 1;
      continue;
    }
    AirSpan& last = result.back();
    const double share = 1 / ++rows;
    last.until = until;
    last.equilibrium += (equilibrium - last.equilibrium) * share;
    last.diffusion += (diffusion - last.diffusion) * share;
    last.film += (film - last.film) * share;
  }
  return result;
}

std::vector<AirSpan> air_spans(const climate::AirSource& air, Instant from, Instant until, Minutes each) {
  const double at_test = diffusion_across(film_test_temperature).middle.value();
  std::vector<AirSpan> result;
  for (Instant t = from; t < until; t += each) {
    const climate::Air mean = air.mean(t, t + each);
    result.push_back({t, t + each, equilibrium_moisture(mean), diffusion_across(mean.temperature).middle.value() / at_test,
                      film_factor(mean.temperature)});
  }
  return result;
}

std::vector<Warp> warp_over(const Board& board, std::span<const AirSpan> air, std::vector<FilmChange> changes, Diffusivity at_test) {
  std::stable_sort(changes.begin(), changes.end(), [](const FilmChange& a, const FilmChange& b) { return a.at < b.at; });
  Slab slab(board.thickness, board.initial);
  FilmResistance back = no_film, face = no_film;
  auto next = changes.begin();
  std::vector<Warp> result;
  result.reserve(air.size());
  for (const AirSpan& span : air) {
    for (; next != changes.end() && next->at < span.until; ++next) (next->side == Side::back ? back : face) = next->film;
    const auto against = [&span](FilmResistance film) { return FaceCondition{span.equilibrium, still_air + film * span.film}; };
    slab.advance({at_test * span.diffusion, against(back), against(face)},
                 Seconds(std::chrono::duration<double>(span.until - span.from).count()));
    result.push_back({span.until, sag(free_curvature(slab.cells(), board.coefficient, board.thickness), board.width), slab.mean()});
  }
  return result;
}

WarpSummary summary(std::span<const Warp> history) {
  const auto farther = [](const Warp& a, const Warp& b) { return std::abs(a.cup.value()) < std::abs(b.cup.value()); };
  return {*std::max_element(history.begin(), history.end(), farther), history.back()};
}

}  // namespace coatday::wood
