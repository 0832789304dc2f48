#pragma once
// The lower part of a week: what becomes of every face, other work, and what may be done with each piece.

#include "report/figures/strip.h"

namespace coatday::report::page {

void draw_faces(Strip&, const Chart&);

}  // namespace coatday::report::page
