#pragma once
// Two plans of one order side by side: as it is, and with a change.

#include "job/plan.h"

namespace coatday::job {

/// What the heater uses.
struct Heat {
  double kilowatt_hours = 0;
  std::optional<Money> cost;  ///< none where the shop has no price
};
/// By the shop's room, while its air comes from it. Returns nothing where the shop does not say what its heater can do, or where a logger read
/// the air in some of those hours.
[[nodiscard]] std::optional<Heat> heat_used(const Plan&, Instant from, Instant until);

struct Comparison {
  std::vector<Move> moved;      ///< coats of the second plan that had another start in the first, by their new start
  std::size_t stayed = 0;       ///< coats that did not move
  std::size_t added = 0;        ///< coats that the first plan did not have
  std::size_t gone = 0;         ///< coats of the first plan that the second does not have
  Instant air_from, air_until;  ///< the shop's air is compared from the later start until both orders may be delivered
  double warmer = 0;            ///< K h by which the air of the second is warmer, summed over the half hours in which it is
  double cooler = 0;            ///< and by which it is colder
  Hours differs{0};             ///< so long the temperatures differ
  std::optional<Heat> heat_before, heat_after;
};

/// Coats are matched by id. Air is compared where both plans have it, and not at all where one of them is no plan.
[[nodiscard]] Comparison compare(const Plan& before, const Plan& after);

/// What the cans cost together, and how many kinds that must be bought have no price.
struct Cost {
  Money sum;
  std::size_t unpriced = 0;
};
[[nodiscard]] Cost cost_of(const Plan&);
/// Cans of a product, or of a part of it, in two plans.
struct BuyChange {
  std::string product;  ///< id
  std::string name;     ///< of the product, with its part
  std::vector<Bought> was, now;
};
/// So much more the second costs; nothing where not all has a price.
[[nodiscard]] std::optional<Money> dearer(const Plan& before, const Plan& after);
/// What is not bought in the same cans, by name.
[[nodiscard]] std::vector<BuyChange> buy_changes(const Plan& before, const Plan& after);

}  // namespace coatday::job
