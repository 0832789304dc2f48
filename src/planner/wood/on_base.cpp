#include "planner/wood/on_base.h"

#include <algorithm>
#include <string_view>

namespace coatday::planner {
namespace {

constexpr std::array<std::string_view, 4> season_names{"Dec-Feb", "Mar-May", "Jun-Aug", "Sep-Nov"};

MoistureContent within_range(MoistureContent m) { return std::clamp(m, wood::driest_for_movement, wood::dampest_for_movement); }

std::vector<job::SeasonWidth> seasons(const Months& months, const job::WoodBoard& board) {
  std::vector<job::SeasonWidth> all;
  for (std::size_t s = 0; s < 4; ++s) {
    const MoistureContent mean = (months[(3 * s + 11) % 12] + months[3 * s] + months[3 * s + 1]) / 3;
    all.push_back({std::string(season_names[s]), mean, wood::movement(board.width, board.coefficient, board.when_fixed, mean)});
  }
  return all;
}

job::FixingCheck check_of(const piece::Fixing& fixing, const job::WoodBoard& board) {
  job::FixingCheck check{&fixing, wood::play(fixing.measures, board.coefficient, *board.year), {}, board.beyond_range};
  if (check.play) check.opening_needed = fixing.measures.shank + check.play->needed() * 2;
  return check;
}

}  // namespace

Months months_of(AirHours& room, Instant from, const Zone& zone) {
  std::array<double, 12> sums{}, hours{};
  for (const wood::AirSpan& hour : room.between(from, from + date::days(365))) {
    const unsigned month = static_cast<unsigned>(year_month_day(day_of(zone.to_local(hour.from))).month()) - 1;
    sums[month] += hour.equilibrium.value();
    ++hours[month];
  }
  Months months;
  for (std::size_t m = 0; m < 12; ++m) months[m] = MoistureContent(sums[m] / std::max(1.0, hours[m]));
  return months;
}

void move_with(const Months& months, const piece::Solid& solid, job::WoodBoard& board) {
  const auto [driest, dampest] = std::minmax_element(months.begin(), months.end());
  board.seasons = seasons(months, board);
  board.year = wood::Season{board.when_fixed, within_range(*driest), within_range(*dampest)};
  board.beyond_range = board.year->driest != *driest || board.year->dampest != *dampest;
  const auto edges = wood::play({board.width / 2, {}, {}}, board.coefficient, *board.year);
  if (edges) board.at_edges = *edges;
  for (const piece::Fixing& fixing : solid.fixings) board.fixings.push_back(check_of(fixing, board));
}

}  // namespace coatday::planner
