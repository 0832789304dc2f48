#pragma once
// How fast a clock runs in a given air: 1 in reference air, 0 where no credit is given. Sources: the project's model, each default's
// source stands in the table in law.cpp.

#include <optional>
#include <string>
#include <string_view>

#include "climate/air.h"
#include "finish/words.h"
#include "quantity/text.h"

namespace coatday::finish {

/// Reference air of the stages unless a record says otherwise: 23 °C, 50 % RH (FED-STD-141D Method 4061.3, par. 4.2.2, referee).
inline constexpr climate::Air reference_air{Celsius(23), RelativeHumidity(0.5)};

struct Law {
  enum class Kind { arrhenius, vapour_deficit, vapour_pressure };
  Kind kind = Kind::arrhenius;
  KilojoulesPerMole activation{0};     ///< arrhenius
  double least = 0, most = 0;          ///< the range of kJ/mol, or of shares, that is likely; equal: not known
  double wet_bulb_share = 0;           ///< vapour_deficit: the film's temperature is T - share (T - wet bulb)
  Celsius no_credit_below{-273.15};    ///< the clock stands still below
  Celsius coldest{-273.15};            ///< the law is known from here on; between the floor and this the clock runs on
  Celsius hottest{100};                ///< above it the clock runs as at it: no extrapolation
  RelativeHumidity driest{0};          ///< below it the clock runs as at it, or not at all where it needs water (vapour_pressure)
  RelativeHumidity dampest{1};         ///< vapour_deficit: no credit above; vapour_pressure: as at it
  bool cure_starts_at_recoat = false;  ///< a cure clock that waits for the drying clock
  double rate_factor = 1;              ///< times the rate, for what moves the air: see finish/rate_factors.h
  std::string_view source;

  bool operator==(const Law&) const = default;
};

/// A bound's safe side: waiting uses `slow`, with the law's floors and caps; a window's end uses `fast`, which knows neither, nor a rate factor
/// below 1, so that the window never ends later than the bare law says.
enum class Side { slow, fast };

/// A law as the rows of a label have it.
struct Fit {
  Law law;
  double residual = 0;  ///< largest |ln(label time / fitted time)|

  bool operator==(const Fit&) const = default;
};

/// The class default. Heat-cured paint has a drying clock alone: none for its cure, since shop air never cures it.
[[nodiscard]] std::optional<Law> default_law(Mechanism, Clock);

/// k(air), the clock's hours per hour, with the reference worked out once. 0 everywhere where the reference is air in which the law itself
/// stands still (saturated air and vapour_deficit). The reference is never capped: the record gives its times.
class Rate {
 public:
  Rate(const Law&, const climate::Air& reference, Side = Side::slow);
  [[nodiscard]] double operator()(const climate::Air&) const;

 private:
  Law law_;
  Side side_;
  double at_reference_;
};

[[nodiscard]] inline double rate(const Law& law, const climate::Air& air, const climate::Air& reference, Side side = Side::slow) {
  return Rate(law, reference, side)(air);
}

/// A time may be this many times longer or shorter: 1.4 in 15-30 °C and 30-70 % RH, 2 outside (judgement).
[[nodiscard]] double uncertainty(const climate::Air&);

/// What clocks may do, by what is known: run as expected, or as fast or slow as the uncertainty allows.
enum class Estimate { expected, fast, slow };

/// One value for each.
template <class T>
struct PerEstimate {
  T expected{}, fast{}, slow{};
  friend bool operator==(const PerEstimate&, const PerEstimate&) = default;
};
/// How much an hour counts for the clock on that side, in this air.
[[nodiscard]] double weight(Estimate, const climate::Air&);

/// The law with this activation energy (kJ/mol), or wet-bulb share; as it is where it has neither.
[[nodiscard]] Law with(Law, double parameter);

/// Which limit of the law's range this air is beyond, with the range; nothing within it.
[[nodiscard]] std::optional<std::string> beyond(const Law&, const climate::Air&, Units = Units::metric);

[[nodiscard]] std::string_view word(Law::Kind);  ///< "arrhenius", "vapour deficit", "vapour pressure"

}  // namespace coatday::finish
