#include "planner/wood/cupping.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace coatday::planner {
namespace {

using wood::Side;
using wood::Warp;

bool smaller(const Warp& a, const Warp& b) { return std::abs(a.cup.value()) < std::abs(b.cup.value()); }

/// The part of its cup that a board with open edges keeps. Curvature dies away towards the edges as moisture does in a sheet as wide as the
/// board (product of sheets, Newman's rule, as for one step into the air that follows). Day by day, 1 before the first.
class OpenEdges {
 public:
  OpenEdges(Metres width, wood::Diffusivity at_test) : sheet_(width, MoistureContent(1), cells), at_test_(at_test) {}

  double after(const wood::AirSpan& hour) {
    seconds_ += std::chrono::duration<double>(hour.until - hour.from).count();
    if (seconds_ < 86'400) return kept_;
    const wood::FaceCondition open{MoistureContent(0), wood::still_air};
    sheet_.advance({at_test_ * hour.diffusion, open, open}, wood::Seconds(seconds_));
    seconds_ = 0;
    return kept_ = kept();
  }

 private:
  static constexpr int cells = 64;

  /// Sag is the integral of curvature times the distance from the edge, to the middle.
  [[nodiscard]] double kept() const {
    double with = 0, all = 0;
    for (std::size_t i = 0; i < cells / 2; ++i) {
      const double from_edge = static_cast<double>(i) + 0.5;
      with += sheet_.cells()[i] * from_edge;
      all += from_edge;
    }
    return with / all;
  }

  wood::Slab sheet_;
  wood::Diffusivity at_test_;
  double seconds_ = 0, kept_ = 1;
};

/// Leaves what is outside the range out, and says whether anything was.
bool leave_out_of_range(std::vector<Warp>& all) {
  return std::erase_if(all, [](const Warp& warp) { return !wood::holds_for_movement(warp.mean); }) > 0;
}

Metres cup_at(const std::vector<Warp>& all, Instant t) {
  const auto at = std::find_if(all.begin(), all.end(), [t](const Warp& warp) { return warp.at >= t; });
  return at == all.end() ? Metres(std::nan("")) : at->cup;
}

std::size_t film_coats_on(const std::vector<SideCoat>& coats, Side side) {
  return static_cast<std::size_t>(
      std::count_if(coats.begin(), coats.end(), [side](const SideCoat& c) { return c.side == side && c.film; }));
}

std::vector<SideCoat> without(std::vector<SideCoat> coats, Side side) {
  std::erase_if(coats, [side](const SideCoat& c) { return c.side == side; });
  return coats;
}

}  // namespace

std::optional<wood::Board> board_of(const piece::Part& part, MoistureContent initial) {
  const wood::Species* species = part.species ? wood::find_species(*part.species) : nullptr;
  if (species == nullptr || part.solid.core != piece::Core::solid) return std::nullopt;
  const double coefficient = wood::coefficient_across(*species, part.solid.cut.value_or(wood::flat_cut));
  if (const auto* board = std::get_if<piece::Board>(&part.shape)) return wood::Board{board->thickness, board->width, coefficient, initial};
  if (const auto* top = std::get_if<piece::RoundTop>(&part.shape)) return wood::Board{top->thickness, top->diameter, coefficient, initial};
  return std::nullopt;
}

std::vector<FinishOption> finish_options(const std::vector<SideCoat>& planned) {
  std::vector<FinishOption> options{{"as planned", planned}};
  const std::size_t behind = film_coats_on(planned, Side::back), before = film_coats_on(planned, Side::face);
  const std::vector<SideCoat> face = without(planned, Side::back);
  if (behind != before) {
    const Side less = behind < before ? Side::back : Side::face;
    FinishOption alike{"both faces alike", without(planned, less)};
    for (SideCoat coat : without(planned, less)) {
      coat.side = less;
      alike.coats.push_back(coat);
    }
    std::stable_sort(alike.coats.begin(), alike.coats.end(), [](const SideCoat& a, const SideCoat& b) { return a.at < b.at; });
    options.push_back(std::move(alike));
  }
  if (behind > 0) options.push_back({"underside bare", face});
  if (behind > 1) {
    FinishOption fewer{"one coat fewer underneath", planned};
    const auto last =
        std::find_if(fewer.coats.rbegin(), fewer.coats.rend(), [](const SideCoat& c) { return c.side == Side::back && c.film; });
    fewer.coats.erase(std::next(last).base());
    options.push_back(std::move(fewer));
  }
  options.push_back({"edges bare", planned, true});
  return options;
}

CupCourses cup_courses(const wood::Board& board, const std::vector<SideCoat>& coats, std::span<const wood::AirSpan> hours, Films& films) {
  const wood::DiffusionBand band = wood::diffusion_across(wood::film_test_temperature);
  const auto at = [&](wood::Diffusivity how_fast) { return wood::warp_over(board, hours, films_after(coats, films), how_fast); };
  return {at(band.low), at(band.middle), at(band.high)};
}

CupCourses with_bare_edges(CupCourses courses, const wood::Board& board, std::span<const wood::AirSpan> hours) {
  const wood::DiffusionBand band = wood::diffusion_across(wood::film_test_temperature);
  const std::array<wood::Diffusivity, 3> how_fast{band.low, band.middle, band.high};
  for (std::size_t c = 0; c < courses.size(); ++c) {
    OpenEdges edges(board.width, how_fast[c]);
    for (std::size_t i = 0; i < courses[c].size(); ++i) courses[c][i].cup = courses[c][i].cup * edges.after(hours[i]);
  }
  return courses;
}

std::optional<CupSummary> summarise(CupCourses courses, const std::string& way, std::span<const Instant> marks) {
  CupSummary result;
  std::array<wood::WarpSummary, 3> all;
  for (std::size_t c = 0; c < courses.size(); ++c) {
    result.left_range = leave_out_of_range(courses[c]) || result.left_range;
    if (courses[c].empty()) return std::nullopt;
    all[c] = wood::summary(courses[c]);
  }
  job::Cupping& cupping = result.cupping;
  cupping.way = way;
  cupping.highest = all[1].highest;
  cupping.settled = all[1].settled;
  const auto highest = [](const wood::WarpSummary& a, const wood::WarpSummary& b) { return smaller(a.highest, b.highest); };
  const auto settled = [](const wood::WarpSummary& a, const wood::WarpSummary& b) { return a.settled.cup < b.settled.cup; };
  cupping.least = std::min_element(all.begin(), all.end(), highest)->highest.cup;
  cupping.most = std::max_element(all.begin(), all.end(), highest)->highest.cup;
  cupping.settled_least = std::min_element(all.begin(), all.end(), settled)->settled.cup;
  cupping.settled_most = std::max_element(all.begin(), all.end(), settled)->settled.cup;
  for (const Instant mark : marks) cupping.at_marks.push_back(cup_at(courses[1], mark));
  return result;
}

}  // namespace coatday::planner
