#pragma once
// The upper part of a week: days, nights, the shop's air, and what may go on in it.

#include "report/figures/strip.h"

namespace coatday::report::page {

/// The heads of the days, nights and closed days, temperature, humidity, and when each finish may go on.
void draw_air(Strip&, const Chart&);

}  // namespace coatday::report::page
