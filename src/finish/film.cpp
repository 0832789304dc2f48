#include "finish/film.h"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

namespace coatday::finish {
namespace {

double thinner(const Step& step, const Product& product) { return product.thinner_share + step.thinner_share; }

constexpr double share_rounding = 1e-9;

}  // namespace

double DryingFactor::on(Estimate estimate) const {
  return estimate == Estimate::expected ? expected : estimate == Estimate::slow ? slow : fast;
}

std::optional<FilmLaw> film_law(Mechanism mechanism) {
  switch (mechanism) {
    case Mechanism::water:
      return FilmLaw{1, 1, 1, Micrometres(150)};
    case Mechanism::oxidative:
      return FilmLaw{1.5, 1.75, 2, std::nullopt};
    case Mechanism::alcohol:
    case Mechanism::lacquer_thinner:
    case Mechanism::white_spirit:
    case Mechanism::heat_cured:
      return FilmLaw{1, 1.5, 2, std::nullopt};
    case Mechanism::epoxy:
    case Mechanism::polyurethane_two_part:
    case Mechanism::acid_cured:
    case Mechanism::moisture_cure:
    case Mechanism::cyanoacrylate:
      break;
  }
  return std::nullopt;
}

Micrometres film_of_times(const Product& product) {
  return product.film_of_times.value_or(Micrometres(1000 * (1 + product.thinner_share) / product.spreading_rate().value()));
}

std::optional<Micrometres> wet_film(const Step& step, const Product& product) {
  if (step.wet_film) return step.wet_film;
  if (!step.dry_film || !product.volume_solids) return std::nullopt;
  return wet_film(*step.dry_film, *product.volume_solids, thinner(step, product));
}

std::optional<std::string> film_refused(const Step& step, const Product& product, Units units) {
  if (step.dry_film && !step.wet_film && !product.volume_solids) {
    return fmt::format("the record of '{}' has no volume solids, so that its wet film does not follow from a dry one; say 'wet film'",
                       product.id);
  }
  const std::optional<Micrometres> wet = wet_film(step, product);
  if (!wet) return std::nullopt;
  const auto law = film_law(product.mechanism);
  if (!law) return fmt::format("no law is known for how '{}' dries in another thickness ({})", product.id, word(product.mechanism));
  if (law->thickest && *wet > *law->thickest) {
    return fmt::format("{} wet is beyond the law's range for '{}', up to {} ({})", format_film(*wet, units), product.id,
                       format_film(*law->thickest, units), word(product.mechanism));
  }
  const Micrometres known = film_of_times(product);
  const double share = *wet / known;
  if (share >= thinnest_share - share_rounding && share <= thickest_share + share_rounding) return std::nullopt;
  return fmt::format("{} wet is too {} for '{}': its times are for {}, and hold for half to twice that", format_film(*wet, units),
                     share < 1 ? "thin" : "thick", product.id, format_film(known, units));
}

DryingFactor drying_factor(const Step& step, const Product& product) {
  const std::optional<Micrometres> wet = wet_film(step, product);
  const auto law = film_law(product.mechanism);
  if (!wet || !law) return {};
  const double share = *wet / film_of_times(product);
  const auto [fast, slow] = std::minmax({std::pow(share, law->fast), std::pow(share, law->slow)});
  return {fast, std::pow(share, law->expected), slow};
}

SquareMetresPerLitre spreading_rate(const Step& step, const Product& product) {
  const std::optional<Micrometres> wet = wet_film(step, product);
  return wet ? SquareMetresPerLitre(1000 * (1 + thinner(step, product)) / wet->value()) : product.spreading_rate();
}

Hours hours_of_film(const StageHours& hours, Stage stage, double factor) {
  const Hours need = hours[stage].value();
  if (clock_of(stage) == Clock::drying) return need * factor;
  if (stage == Stage::recoat_close) return need + hours[Stage::recoat].value_or(Hours(0)) * std::min(0.0, factor - 1);
  Hours dried{0};
  for (const Stage drying : {Stage::tack_free, Stage::handle, Stage::sand, Stage::recoat}) {
    dried = std::max(dried, hours[drying].value_or(Hours(0)));
  }
  return need + dried * std::max(0.0, factor - 1);
}

}  // namespace coatday::finish
