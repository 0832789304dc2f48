#pragma once
// The shop: who works when, where pieces dry, what else goes on there, what is on the shelf.

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "climate/air.h"
#include "climate/timetable.h"
#include "quantity/location.h"
#include "quantity/quantity.h"
#include "quantity/text.h"
#include "quantity/time.h"

namespace coatday::shop {

struct Shift {  ///< wall time; until > from
  weekday day;
  Minutes from{0};
  Minutes until{0};
};

enum class PlaceKind { points, hooks, rack, floor };
[[nodiscard]] std::string_view word(PlaceKind);

/// So many equal places to dry. Hooks take anything up to their length; the others a footprint. No size: anything fits.
struct DryingPlace {
  std::string name;
  PlaceKind kind = PlaceKind::points;
  int count = 1;
  std::optional<Metres> length, width;
  Location where;
};

struct StockItem {
  std::string product;
  Litres volume;
  std::optional<LocalDay> opened;
  std::optional<LocalDay> good_until;
  Location where;
};

/// Heavy dust hangs for hours after machining; light dust is gone after sanding by hand, vacuum and tack cloth.
enum class Dust { none, light, heavy };

/// What running the heater costs.
struct HeatingCost {
  Kilowatts power;              ///< at the heater's full output
  std::optional<Money> energy;  ///< a kWh
};

/// Work that is no coat: milling, welding, glue-up, another delivery. Fixed (start given) or movable.
struct Work {
  std::string id;
  std::string name;
  Hours takes{0};
  int people = 1;
  Dust dust = Dust::none;
  bool hot = false;
  bool may_pause = false;                        ///< may be split at breaks and closed hours
  std::optional<Instant> start;                  ///< fixed
  std::optional<Instant> not_before, not_after;  ///< movable: start and end lie between
  Hours rest{0};                                 ///< what follows waits so long after it (glue that sets)
  Location where;
};

/// Fresh air for the one room: against solvent vapour, and for the films.
struct Ventilation {
  std::optional<CubicMetresPerHour> airflow;  ///< what the exhaust carries out; none: nobody has said
  double limit = 0.25;                        ///< vapour stays below this share of its lower explosive limit
  bool closed = false;                        ///< almost no fresh air while coats dry
  double air_movement = 1;                    ///< how fast water and solvents leave, against the shop that the records' times are from
};

struct Shop {
  std::string name;
  Zone zone;
  Units units = Units::metric;
  std::string currency;
  int people = 1;
  std::vector<Shift> week;
  std::vector<LocalDay> closed;
  std::vector<DryingPlace> places;
  std::vector<std::string> methods;  ///< words of finish::Method; the shop itself knows no finishes
  std::vector<StockItem> stock;
  std::vector<Work> work;
  Hours light_dust_settles{0};
  Hours heavy_dust_settles{0};
  Hours hot_work_clear{0.5};       ///< between hot work and flammable vapour, both ways
  Hours both_faces_within{24};     ///< the second face follows the first
  std::optional<Minutes> turning;  ///< per part turned over; none: by its size and mass
  Minutes handling{0};             ///< per item and step: fetch, place
  /// So many parts at most stand aside, dry to handle and not yet dry to pack; 0: they keep their places instead; none: room enough.
  std::optional<int> set_aside;
  Metres gap;              ///< between things that dry side by side on one place
  Hours sharing_gap{0.5};  ///< coats of one product this close share their set-up
  /// Where the cans stand until they are brought in; none: in the shop.
  std::optional<Celsius> finishes_kept_at;
  std::string air_description;
  Ventilation ventilation;
  std::optional<HeatingCost> heating;  ///< none where the file does not say what the heater can do
};

/// An uninterrupted stretch of working time.
struct WorkingTime {
  Instant begin;
  Instant end;
};
/// The shop's shifts within [from, until], closed days left out, cut to the range; adjacent ones joined.
[[nodiscard]] std::vector<WorkingTime> working_time(const Shop&, Instant from, Instant until);

/// The same, cut where a day ends.
[[nodiscard]] std::vector<WorkingTime> cut_by_day(const Zone&, const std::vector<WorkingTime>&);

/// When so long a work that rests in closed hours is over; `latest` where it is not over by then.
[[nodiscard]] Instant worked_until(const Shop&, Instant start, std::chrono::seconds work, Instant latest);

/// Litres on the shelf that can still be used on that day: not past good_until, nor opened longer ago than the product keeps.
[[nodiscard]] Litres usable_stock(const Shop&, const std::string& product, LocalDay on, std::optional<Hours> keeps_opened);

}  // namespace coatday::shop
