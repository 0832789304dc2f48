#pragma once
// What holds where a file does not say: all of it, in one place. Each stands in the commented examples too.

#include "quantity/text.h"
#include "quantity/time.h"

namespace coatday::input::defaults {

// Shop.
inline constexpr Units units = Units::metric;
inline constexpr int people = 1;
inline constexpr Hours light_dust_settles{0.5};  ///< common practice, no source
inline constexpr Hours heavy_dust_settles{12};   ///< Utah State University Extension HI 28: at least 12 h after machining
/// After hot work: a fire watch of at least half an hour, 29 CFR 1910.252(a)(2)(iii)(B). Before it: judgement, no source.
inline constexpr Hours hot_work_clear{0.5};
inline constexpr Hours both_faces_within{24};  ///< common practice, no source
inline constexpr Minutes handling{1};          ///< common practice, no source
inline constexpr Metres gap{0.025};            ///< wet edges must not touch; common practice, no source
inline constexpr Hours sharing_gap{0.5};       ///< common practice, no source

// Turning takes what job/turning.h says. Everything else takes the value that its type starts with: one of a part, on points, no dust, no
// heat.

}  // namespace coatday::input::defaults
