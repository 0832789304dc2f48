#pragma once
// The air, the surfaces and the can that a coat meets when it goes on.

#include <string_view>
#include <vector>

#include "climate/air.h"
#include "finish/product.h"

namespace coatday::finish {

/// The room's air, and what lags behind it: the surfaces that the coat goes on, each in the air as it is there, and the can that it comes
/// from. Lives no longer than the air.
struct Conditions {
  struct Surface {
    std::string_view name;  ///< "the steel"
    const climate::AirSeries* air = nullptr;
  };

  Conditions(const climate::AirSeries& in_room) : room(&in_room) {}  // NOLINT(google-explicit-constructor): the room's air may be all

  const climate::AirSeries* room;
  std::vector<Surface> surfaces;
  const climate::AirSeries* can = nullptr;
};

/// Of the smallest can that the product comes in, 1 l where its record has none; what a day needs may be filled into one. As high as wide
/// and full of water, which is the slow side for any finish. To the minute.
[[nodiscard]] Hours can_time_constant(const Product&);

}  // namespace coatday::finish
