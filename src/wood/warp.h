#pragma once
// A board through time: the air and its films drive moisture through it, and it cups.

#include <cstdint>
#include <span>
#include <vector>

#include "climate/air.h"
#include "wood/cup.h"
#include "wood/diffusion.h"

namespace coatday::wood {

/// Air over a span of time, as wood feels it.
struct AirSpan {
  Instant from, until;
  MoistureContent equilibrium;
  double diffusion;  ///< of the diffusivity at the films' test temperature
  double film;       ///< of a film's resistance there
};
/// Spans of up to `each` (> 0); the equilibrium is the mean of each. Made once for all the boards in that air.
[[nodiscard]] std::vector<AirSpan> air_spans(const climate::AirSeries&, Minutes each = Minutes(60));

/// The same straight from a source, without dew points: spans of `each` from `from` until `until` is reached.
[[nodiscard]] std::vector<AirSpan> air_spans(const climate::AirSource&, Instant from, Instant until, Minutes each = Minutes(60));

enum class Side : std::uint8_t { back, face };
/// From this moment on, the side has this film on top of still air.
struct FilmChange {
  Instant at;
  Side side;
  FilmResistance film;  ///< at the test's temperature, all coats together
};

struct Board {
  Metres thickness, width;  ///< width across the grain
  double coefficient;       ///< of change across the width, for each 1 %
  MoistureContent initial;
};

struct Warp {
  Instant at;
  Metres cup;  ///< of the free board; positive: the face bulges
  MoistureContent mean;
};
/// The board at the end of each span. Both sides are bare until a change, and changes take effect with the span that holds them; their
/// order in time does not matter. Its ends and edges are taken as sealed. `at_test`: diffusivity at the films' test temperature.
/// The coefficient holds only from 6 to 14 %: check the means before you show a cup.
[[nodiscard]] std::vector<Warp> warp_over(const Board&, std::span<const AirSpan>, std::vector<FilmChange>, Diffusivity at_test);

struct WarpSummary {
  Warp highest;  ///< the cup farthest from flat either way, the first of equals
  Warp settled;  ///< the last
};
/// Of at least one.
[[nodiscard]] WarpSummary summary(std::span<const Warp>);

}  // namespace coatday::wood
