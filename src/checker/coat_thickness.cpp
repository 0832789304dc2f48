#include "checker/coat_thickness.h"

#include <algorithm>
#include <cmath>

namespace coatday::checker {

namespace {

using finish::Mechanism;

bool evaporates(Mechanism m) {
  return m == Mechanism::alcohol || m == Mechanism::lacquer_thinner || m == Mechanism::white_spirit || m == Mechanism::heat_cured;
}

/// n of the two ends and the middle: water 1, oxidising 1.5 to 2, evaporating 1 to 2.
double exponent(Mechanism m, double towards_thick) {
  if (m == Mechanism::oxidative) return 1.75 + 0.25 * towards_thick;
  return evaporates(m) ? 1.5 + 0.5 * towards_thick : 1;
}

}  // namespace

/// A litre over a square metre is a millimetre.
Film::Film(const finish::Step* step, const finish::Product& product) : mechanism_(product.mechanism) {
  const double of_can = product.stated_spreading_rate
                            ? 1000 / product.stated_spreading_rate->value()
                            : product.dry_film.value_or(Micrometres(0)).value() / product.volume_solids.value_or(1);
  recorded_ = product.film_of_times ? product.film_of_times->value() : of_can * (1 + product.thinner_share);
  thinned_ = 1 + product.thinner_share + (step != nullptr ? step->thinner_share : 0);
  wet_ = of_can * thinned_;
  if (step == nullptr) return;
  stated_ = step->wet_film || step->dry_film;
  if (step->wet_film) wet_ = step->wet_film->value();
  if (step->dry_film && !step->wet_film) wet_ = step->dry_film->value() * thinned_ / product.volume_solids.value_or(1);
}

double Film::drying(Estimate estimate) const {
  if (!stated_) return 1;
  const double share = wet_ / recorded_;
  const double later = share > 1 ? 1 : -1;  // which end of n makes it later
  return std::pow(share, exponent(mechanism_, estimate == Estimate::expected ? 0 : estimate == Estimate::slow ? later : -later));
}

double Film::square_metres_per_litre() const { return 1000 * thinned_ / wet_; }

bool Film::known() const {
  if (!stated_) return true;
  constexpr double inexact = 1e-6;
  const double share = wet_ / recorded_;
  const bool water = mechanism_ == Mechanism::water;
  if (!water && mechanism_ != Mechanism::oxidative && !evaporates(mechanism_)) return false;
  return share >= 0.5 - inexact && share <= 2 + inexact && (!water || wet_ <= 150 + inexact);
}

}  // namespace coatday::checker
