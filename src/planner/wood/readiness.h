#pragma once
// How moist a part is, and when its wood will have come to rest in the shop.

#include "job/wood_findings.h"
#include "planner/wood/air_hours.h"

namespace coatday::planner {

/// Wood without a reading counts as if it had lain in the shop's air for so long (judgement).
inline constexpr date::days usual_lay{60};
/// Wood that is not at rest by then counts as never at rest.
inline constexpr date::days longest_rest{365};
/// The shop's equilibrium is the mean over so long from then on (judgement: so long is a board's skin in this air while it is coated).
inline constexpr date::days felt_for{7};

/// A meter's latest readings: those of the day of the last one.
struct Measured {
  MoistureContent mean, driest, dampest;
  Instant at;
};
[[nodiscard]] std::optional<Measured> measured(const piece::Solid&, Instant from);

/// Kept elsewhere and not measured: nothing is known of its moisture.
[[nodiscard]] inline bool unknown_moisture(const piece::Part& part) { return part.kept_at && part.solid.readings.empty(); }

/// "12.0 %".
[[nodiscard]] std::string moisture_text(MoistureContent);

/// The first instant for which the hours in the shop must be known.
[[nodiscard]] Instant known_since(const job::Job&, Instant from);

/// An hour of a part that lies bare in the shop's air.
struct BareHour {
  Instant from, until;
  MoistureContent moisture;  ///< when it begins
  bool at_rest;              ///< all through it
};
/// From the hour that holds `from` until `until`, by the middle of the published spread of diffusion.
[[nodiscard]] std::vector<BareHour> bare_hours(const piece::Part&, MoistureContent band, Instant from, Instant until, AirHours& shop);

/// A part is at rest all this time.
struct RestSpan {
  Instant from, until;
};
[[nodiscard]] std::vector<RestSpan> spans_at_rest(std::span<const BareHour>);

struct MoistureRange {
  MoistureContent driest{1}, dampest{0};
};
/// From the hour that holds `begin`.
[[nodiscard]] MoistureRange range_from(std::span<const BareHour>, Instant begin);

/// Of a wooden part at `from`, bare, as a slab as thick as its section. It leaves out the customer's room.
[[nodiscard]] job::WoodReady readiness(const piece::Part&, MoistureContent band, Instant from, AirHours& shop);

}  // namespace coatday::planner
