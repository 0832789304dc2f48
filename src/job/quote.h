#pragma once
// What an order takes and costs, and when it can honestly be promised: for a price before it is taken.

#include <optional>
#include <string>
#include <vector>

#include "job/plan.h"
#include "shop/rates.h"

namespace coatday::job {

/// Work of one kind.
struct Hands {
  std::string what;  ///< "coats", "sanding and preparing"
  Hours hours{0};    ///< one person's; two at work count twice
};

/// A finish, or a part of a two-part one: its cans whole, and what is taken from the shelf by the price of a litre of its smallest can.
struct Material {
  std::string product, part;
  std::vector<Bought> buy;
  std::optional<Litres> spare{};  ///< as of the purchase
  Litres from_shelf;
  std::optional<Money> cost;  ///< none where something of it has no price
};

struct QuoteDays {
  int hands_on = 0;  ///< with work on the order
  int waiting = 0;   ///< open, and nothing to do on it: it dries, or the shop is at other work
  int closed = 0;
};

struct Quote {
  std::vector<Hands> hands;  ///< only kinds that there are
  Hours hours{0};
  std::vector<Material> materials;
  Money materials_cost;                      ///< of those with a price
  std::size_t unpriced = 0;                  ///< finishes without one
  std::size_t sundries = 0;                  ///< abrasives and the like, never priced
  std::optional<Money> work, markup, price;  ///< as far as the rates say; a price needs every finish's
  QuoteDays days;                            ///< from the first work to the promise, both included
  std::optional<Instant> begins, last_coat;
  std::optional<Instant> expected, promise;  ///< all of it may be delivered: expected, and by the slow clocks; none where never in this air
};

/// Of a feasible plan. The shop's own work does not count.
[[nodiscard]] Quote quote(const Plan&, const shop::Rates&);

}  // namespace coatday::job
