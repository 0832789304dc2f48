#pragma once
// The shop from its file.

#include <optional>
#include <vector>

#include "climate/log.h"
#include "input/amounts.h"
#include "input/fields.h"
#include "input/files.h"
#include "job/job.h"
#include "shop/rates.h"

namespace coatday::input {

[[nodiscard]] const Keys& shop_keys();
/// The shop, as good as it can be read. Stock must be of the catalogue's products.
[[nodiscard]] shop::Shop read_shop(const Fields&, const finish::Catalogue&, Mistakes&);
/// What it asks for its work; money needs its currency.
[[nodiscard]] shop::Rates read_rates(const Fields&, const std::string& currency);
struct ShopAir {
  job::AirMaker maker;   ///< empty after a mistake
  job::RoomAirMaker in;  ///< empty where no air comes from a room
  std::vector<job::AirNote> notes;
  std::optional<shop::HeatingCost> heating;
  climate::KnownRoom room;
  climate::LogForm log;  ///< how its logger is said to write
};
/// The air of the shop's file. What comes first in the list counts first: log, outdoors, timetable, constant.
[[nodiscard]] ShopAir read_air(const Fields& shop, const std::filesystem::path& file, const Zone&, Files&, Mistakes&);

/// Work that is no coat: what the shop's and the order's have in common.
[[nodiscard]] shop::Work read_work(const Fields&, const shop::Shop&);
/// When a day's work ends: the end of the last shift on it, or on the nearest open day before. The day's end where nobody ever works.
[[nodiscard]] Instant end_of_work(const shop::Shop&, LocalDay);

/// A parser of instants in the shop's time; a date alone is its first moment.
[[nodiscard]] inline auto instant_in(const Zone& zone) {
  return [&zone](std::string_view typed) { return parse_moment(typed).map([&zone](const Moment& m) { return zone.to_instant(m.time); }); };
}

}  // namespace coatday::input
