#pragma once
// The shop's air day by day, and when each finish may go on in it.

#include <set>
#include <string>
#include <vector>

#include "job/job.h"

namespace coatday::job {

struct Range {
  double low = 0, high = 0;
};

/// One day of wall time.
struct AirDay {
  LocalDay day;
  std::size_t first = 0, last = 0;    ///< its rows, the last one not included
  std::optional<Range> open, closed;  ///< °C from opening to closing, breaks included, and in the other hours; none where there are none
  Range humidity;                     ///< fractions
  Range dew_point;                    ///< °C
  Hours saturated{0};                 ///< at 100 % RH
  std::optional<Litres> condensed;    ///< where the room's moisture is known
};

/// A finish, and what it goes on, by time constant.
struct Use {
  std::string product;
  std::set<Hours> wood, steel;
};

struct FinishHours {
  Use use;
  Hours can;                   ///< the time constant of its can
  std::vector<bool> may;       ///< for each row: a coat may go on throughout it on all of that, and the air after it is right, too
  std::string limit_exceeded;  ///< the first reason why not while somebody is at work; empty where there is none
  Instant hindered;
};

struct AirForecast {
  climate::AirSeries air;     ///< it goes past the last day, as long as a coat must be held warm
  std::vector<bool> working;  ///< for each row: somebody is at work when it begins
  std::vector<AirDay> days;
  std::vector<FinishHours> finishes;
};

/// So many whole days from the one that holds `from`. The products are of the catalogue. Cans and coated parts have always been in the room.
[[nodiscard]] AirForecast forecast(const Job&, const finish::Catalogue&, const std::vector<Use>&, Instant from, int days);

/// The products of an order's schedules, in their order, with the parts that take them; without an order, those on the shelf.
[[nodiscard]] std::vector<Use> in_use(const Job&);

}  // namespace coatday::job
