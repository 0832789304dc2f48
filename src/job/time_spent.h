#pragma once
// Where the time of an order goes, from the plan's start to its delivery.

#include <string>
#include <string_view>
#include <vector>

#include "quantity/quantity.h"
#include "quantity/time.h"

namespace coatday::job {

/// What the order waits for, one thing at a time. `rest`: a wait that the schedule or the work asks for; `visit`: put off to other work.
enum class TimeCause { drying, air, closed, place, set_aside, hands, spray_gun, exhaust, dust, hot_work, limit, visit, rest, start, work };
[[nodiscard]] std::string_view word(TimeCause);

/// Calendar time, nights included.
struct TimeShare {
  TimeCause cause = TimeCause::work;
  std::string place;  ///< the kind of place that is not free
  Hours time{0};
  Hours slower{0};  ///< of drying: so much of it, since this air is slower than the reference air
};

/// The way to the last delivery of an order, back from it through what decided each start.
struct TimeSpent {
  std::string order;  ///< where several are planned together; else empty
  Hours all{0};
  std::vector<TimeShare> shares;  ///< the largest first; together they are all of it
};

}  // namespace coatday::job
