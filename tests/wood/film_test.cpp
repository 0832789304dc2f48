// Films against the published exclusions: fitted on one exposure, the other two predicted. Rows from memory are not judged.

#include "wood/film.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <map>
#include <set>

namespace coatday::wood {
namespace {

const Diffusivity usual = diffusion_across(film_test_temperature).middle;

struct Errors {
  double sum = 0, worst = 0;
  int count = 0;
  void add(double error) {
    sum += std::abs(error);
    worst = std::max(worst, std::abs(error));
    ++count;
  }
  [[nodiscard]] double mean() const { return sum / count; }
};

/// Prints a line for each row, its fit and its errors in whole percent.
Errors predict(Diffusivity at_test, bool print) {
  Errors all;
  for (const Exclusion& row : exclusion_table()) {
    const auto fitted = fitted_exposure(row);
    if (row.verification != Verification::compared || !fitted) continue;
    const FilmResistance film = film_that_excludes(row.percent[*fitted], exposure_days[*fitted], at_test);
    if (print)
      std::printf("%-45s %d coats, fitted on day %2.0f, %8.2e s/m:", row.finish.data(), row.coats, exposure_days[*fitted], film.value());
    for (std::size_t i = 0; i < exposure_days.size(); ++i) {
      if (i == *fitted || row.percent[i] == unknown_exclusion) continue;
      const double told = exclusion_of(film, at_test, exposure_days[i]);
      all.add(told - row.percent[i]);
      if (print) std::printf("  day %2.0f %3.0f for %3d", exposure_days[i], told, row.percent[i]);
    }
    if (print) std::printf("\n");
  }
  return all;
}

/// In whole percent of exclusion. Measured: mean 2.5, worst 15, on the first day of a weak film.
TEST(Film, FittedOnOneExposurePredictsTheOthers) {
  const Errors all = predict(usual, true);
  std::printf("%d predictions: mean error %.1f, worst %.1f percent\n", all.count, all.mean(), all.worst);
  EXPECT_GT(all.count, 60);
  EXPECT_LT(all.mean(), 3);
  EXPECT_LT(all.worst, 16);
}

TEST(Film, TheMiddleOfTheBandFitsBetterThanItsLowEnd) {
  const DiffusionBand band = diffusion_across(film_test_temperature);
  EXPECT_LT(predict(band.middle, false).mean(), predict(band.low, false).mean());
}

/// What the table has to show, row for row.
TEST(Exclusion, FallsWithDaysAndRisesWithCoats) {
  std::map<std::string_view, const Exclusion*> before;
  for (const Exclusion& row : exclusion_table()) {
    if (row.verification == Verification::conflicting) continue;
    int last = 100;
    for (const int percent : row.percent) {
      if (percent == unknown_exclusion) continue;
      EXPECT_LE(percent, last) << row.finish << row.coats;
      last = percent;
    }
    const Exclusion* fewer = before[row.finish];
    for (std::size_t i = 0; fewer != nullptr && i < row.percent.size(); ++i) {
      EXPECT_GT(row.coats, fewer->coats) << row.finish;
      if (row.percent[i] == unknown_exclusion) continue;
      EXPECT_GE(row.percent[i], fewer->percent[i]) << row.finish << row.coats;
    }
    before[row.finish] = &row;
  }
  EXPECT_GT(before.size(), 20U);
}

TEST(Film, PredictedExclusionFallsWithDaysAndRisesWithTheFilm) {
  for (double film = 1e7; film < 1e10; film *= 3) {
    double last = 100;
    for (const double days : {0.5, 1.0, 3.0, 7.0, 14.0, 40.0}) {
      const double now = exclusion_of(FilmResistance(film), usual, days);
      EXPECT_LT(now, last);
      EXPECT_LT(now, exclusion_of(FilmResistance(2 * film), usual, days));
      last = now;
    }
  }
  EXPECT_NEAR(exclusion_of(no_film, usual, 7), 0, 1e-12);
}

TEST(Film, FitIsTheInverseOfThePrediction) {
  for (const double percent : {10.0, 45.0, 93.0}) EXPECT_NEAR(exclusion_of(film_that_excludes(percent, 7, usual), usual, 7), percent, 0.1);
}

TEST(Film, ByCoats) {
  const auto film = [](int coats) { return film_of("Urethane varnish (oil-modified)", coats, usual).value(); };
  EXPECT_EQ(film(0).resistance, no_film);
  for (int coats = 0; coats < 6; ++coats) EXPECT_LT(film(coats).resistance, film(coats + 1).resistance) << coats;
  EXPECT_FALSE(film(6).beyond);
  EXPECT_TRUE(film(7).beyond);
  EXPECT_EQ(film(7).resistance, film(6).resistance);
  const auto gloss = [](int coats) { return film_of("Enamel paint, gloss (soya alkyd; interior)", coats, usual)->resistance; };
  EXPECT_NEAR(gloss(1) / gloss(2), 0.5, 1e-9);  // one coat was not seen: half of two
  EXPECT_FALSE(film_of("Pitch", 2, usual).has_value());
}

TEST(Film, TheConflictingRowIsNotUsed) {
  const Film two = film_of("Nitrocellulose lacquer", 2, usual).value(), three = film_of("Nitrocellulose lacquer", 3, usual).value();
  EXPECT_TRUE(three.beyond);
  EXPECT_EQ(two.resistance, three.resistance);
}

TEST(FilmClass, EveryFinishThatIsNamedIsInTheTable) {
  std::set<std::string_view> known;
  for (const Exclusion& row : exclusion_table()) known.insert(row.finish);
  for (const auto* family :
       {"shellac", "oil-varnish", "lacquer", "lacquer-sealer", "two-part-polyurethane", "moisture-cure-polyurethane", "acid-cured",
        "water-clear", "water-primer", "water-enamel", "alkyd-enamel", "oil", "hardwax", "wax", "oil-stain"}) {
    ASSERT_TRUE(film_class(family).has_value()) << family;
    EXPECT_TRUE(known.count(film_class(family)->finish)) << family;
  }
  EXPECT_TRUE(film_class("water-clear")->nearest);
  EXPECT_FALSE(film_class("shellac")->nearest);
  EXPECT_EQ(film_class("dye")->finish, "");
  EXPECT_FALSE(film_class("metal-enamel").has_value());
}

}  // namespace
}  // namespace coatday::wood
