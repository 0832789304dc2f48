#pragma once
// A finish product: a generic class, or the user's own from its label.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "climate/air.h"
#include "finish/law.h"
#include "finish/rate_factors.h"
#include "finish/solvent.h"
#include "finish/words.h"
#include "quantity/location.h"

namespace coatday::finish {

using StageHours = PerStage<std::optional<Hours>>;  ///< from application, in the row's air; none where the product has no such stage

/// One line of a label's table of times.
struct StageRow {
  climate::Air air = reference_air;
  StageHours hours;
};

/// Outside these a coat may not go on.
struct Limits {
  Celsius coldest{10};
  Celsius hottest{32};
  RelativeHumidity dampest{0.85};
  Kelvins dew_point_margin{3};           ///< air (surface) above its dew point at application
  Hours hold{0};                         ///< for so long after application ...
  Celsius hold_above{10};                ///< ... it may not be colder than this
  std::optional<Kelvins> blush_margin;   ///< refused when air is less than this above its dew point
  std::optional<Kelvins> blush_warning;  ///< warned of below this
};

/// A can that can be bought.
struct Can {
  Litres size;
  std::optional<Money> price;
};

struct TwoPart {
  double base_parts = 1;  ///< by volume
  double hardener_parts = 1;
  Hours induction{0};
};

struct Product {
  std::string id;
  std::string name;
  std::string family;  ///< its name in the rules of what goes over what
  Base base = Base::none;
  Role role = Role::topcoat;
  Mechanism mechanism = Mechanism::oxidative;
  bool film = true;            ///< adds to the film that resists moisture (both-faces rule)
  std::vector<StageRow> rows;  ///< at least one; the first is the record's own reference
  Limits limits;
  std::optional<SquareMetresPerLitre> stated_spreading_rate;  ///< one of this ...
  std::optional<double> volume_solids;                        ///< ... or this, a fraction, with
  std::optional<Micrometres> dry_film;                        ///< the dry film of a coat
  std::optional<Micrometres> film_of_times;                   ///< wet, that its times are for, where that is not its own coverage's
  double thinner_share = 0;                                   ///< litres of thinner per litre of product
  double first_coat_factor = 1;                               ///< bare wood takes so many times as much
  double end_grain_factor = 1;                                ///< and end grain so many times a face (first coat)
  std::optional<Hours> pot_life;                              ///< in reference air
  std::optional<TwoPart> two_part;
  std::optional<Hours> stand;  ///< lies on the surface so long before it is wiped off
  GramsPerLitre voc{0};
  std::optional<Solvent> solvent;                ///< what its vapour counts as; none: see finish/vapour.h
  std::optional<GramsPerLitre> solvent_content;  ///< of all that burns, where it is more than the VOC
  FlashClass flash = FlashClass::none;
  std::vector<Hazard> hazards;
  bool food_contact_when_cured = false;
  std::vector<Can> cans;
  std::map<Method, SquareMetresPerHour> work_rates;  ///< the methods it can be put on with
  Hours set_up{0};                                   ///< mixing, straining, masking, gun: once a session
  Hours clean_up{0};
  std::optional<Hours> shelf_life_opened;
  std::optional<Law> drying_law, cure_law;     ///< the record's or the fit's, else none and the class default holds
  PerStage<std::optional<Fit>> fits;           ///< of the stages that several rows of the record give
  RateFactors rate_factors;                    ///< of the shop that it is used in
  std::map<std::string, std::string> sources;  ///< key path ("recoat", "limits.coldest") -> where the value comes from
  Location where;

  [[nodiscard]] const StageRow& reference() const { return rows.front(); }
  [[nodiscard]] std::optional<Law> law(
      Clock) const;  ///< record, fit over all stages of the clock, or class default; times the rate factor of the product
  [[nodiscard]] std::optional<Law> law(Stage) const;  ///< the stage's own fit, or its clock's law
  /// m² of finish that a litre covers in the can's thickness: as stated, or 10 VS% / DFT[µm].
  [[nodiscard]] SquareMetresPerLitre spreading_rate() const;
  [[nodiscard]] bool flammable() const { return flash != FlashClass::none; }
};

/// How long a mix stays usable in this air: the stated life over the cure clock's rate on its fast side. None where the product keeps.
[[nodiscard]] std::optional<Hours> pot_life(const Product&, const climate::Air&);

/// How long a mix stands before it may be used, in this air: longer in the cold, and never shorter than at the hot end of the law's range.
/// Below the law's floor as at it. 0 where nothing has to stand.
[[nodiscard]] Hours induction(const Product&, const climate::Air&);

/// Theoretical spreading rate, 10 VS% / DFT[µm] m²/l. Source: the geometry of a film; UFC 3-190-06 par. 2.1.5 has worked examples.
[[nodiscard]] SquareMetresPerLitre theoretical_spreading_rate(double volume_solids, Micrometres dry_film);
/// Wet film for a dry one, thinner included.
[[nodiscard]] Micrometres wet_film(Micrometres dry_film, double volume_solids, double thinner_share);

}  // namespace coatday::finish
