#include "planner/buy/sundries.h"

#include <cmath>
#include <map>

#include "quantity/text.h"

namespace coatday::planner {
namespace {

// Common practice, no source: each Sundry says so with its rule.
constexpr int finest_on_wood = 180;
constexpr SquareMetres sheet_on_wood(1.0), sheet_on_finish(1.5);
constexpr int rags_a_session = 2;
constexpr Metres long_item(1.5);
constexpr int points_an_item = 4, points_a_long_item = 6;

double sheets(const DryWork& work) {
  return work.area / (work.between_coats || work.grit > finest_on_wood ? sheet_on_finish : sheet_on_wood);
}

}  // namespace

std::vector<job::Sundry> abrasives(std::span<const DryWork> works, Units units) {
  std::map<int, double> by_grit;
  for (const DryWork& work : works) by_grit[work.grit] += sheets(work);
  constexpr double rounding = 1e-9;  // ten times 0.1 m² is one sheet
  std::vector<job::Sundry> all;
  for (const auto& [grit, count] : by_grit) {
    const int whole = static_cast<int>(std::ceil(count - rounding));
    const std::string size = units == Units::us ? "9 x 11 in" : "230 x 280 mm";
    all.push_back({"abrasive, grit " + std::to_string(grit), whole, (whole == 1 ? "sheet " : "sheets ") + size,
                   "one sheet for " + format_area(sheet_on_wood, units) + " of wood, for " + format_area(sheet_on_finish, units) +
                       " above grit 180 or between coats: common practice, no source"});
  }
  return all;
}

std::optional<job::Sundry> rags(int wiped_sessions) {
  if (wiped_sessions <= 0) return std::nullopt;
  return job::Sundry{"rags", wiped_sessions * rags_a_session, "pieces", "two for each coat that is wiped: common practice, no source"};
}

std::optional<job::Sundry> points(std::span<const OnPoints> uses, Units units) {
  int count = 0;
  for (const OnPoints& use : uses) count += use.items * (use.length > long_item ? points_a_long_item : points_an_item);
  if (count <= 0) return std::nullopt;
  const std::string size = units == Units::us ? "59 in" : "1.5 m";
  return job::Sundry{"painter's points", count, "pieces", "four an item, six above " + size + ": common practice, no source"};
}

}  // namespace coatday::planner
