#include "climate/room_fit.h"

#include "climate/fit_cooling.h"
#include "climate/fit_damp.h"

namespace coatday::climate {

RoomFit fit_room(const Log& log, const KnownRoom& known, const Zone& zone) {
  RoomFit fit;
  for (const Reading& reading : log.readings) {
    FitRow row{reading, {}, {}, {}};
    if (known.outdoors) row.outdoors = known.outdoors->at(reading.time).temperature;
    fit.rows.push_back(row);
  }
  fit.time_constant = fit_time_constant(known, zone, fit);
  fit.moisture_gain = fit_moisture_gain(known, fit);
  return fit;
}

}  // namespace coatday::climate
