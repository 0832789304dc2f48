#include "planner/wood/wood_calculator.h"

#include <fmt/core.h>

#include <algorithm>

namespace coatday::planner {
namespace {

constexpr date::days year{365};
/// Of wood across the grain, about; softer woods yield more (judgement, from memory of the Wood Handbook's table 5-1).
constexpr wood::Gigapascals across_the_grain{1};

}  // namespace

WoodCalculator::WoodCalculator(const job::Job& job, const job::Plan& plan)
    : job_(job), plan_(plan), shop_(job.air, known_since(job, plan.from)) {}

Instant WoodCalculator::moves_in(std::size_t piece) const {
  const auto& deliver = plan_.pieces[piece].ready.expected.deliver;
  return std::chrono::floor<std::chrono::hours>(deliver.value_or(plan_.until));
}

AirHours& WoodCalculator::room(std::size_t piece) {
  Instant first = moves_in(piece);
  for (std::size_t p = 0; p < job_.order.pieces.size(); ++p) {
    if (job_.order.pieces[p].order == job_.order.pieces[piece].order) first = std::min(first, moves_in(p));
  }
  return rooms_.try_emplace(job_.order.pieces[piece].order, job_.order.pieces[piece].room, first).first->second;
}

const std::vector<wood::AirSpan>& WoodCalculator::through(std::size_t piece) {
  const Instant leaves = moves_in(piece);
  const auto [at, fresh] = through_.try_emplace({job_.order.pieces[piece].order, leaves});
  if (!fresh) return at->second;
  const auto before = shop_.between(plan_.from, leaves);
  at->second.assign(before.begin(), before.end());
  if (!job_.order.pieces[piece].room) return at->second;
  const auto after = room(piece).between(leaves, leaves + year);
  at->second.insert(at->second.end(), after.begin(), after.end());
  return at->second;
}

long WoodCalculator::hours_beyond_table() const {
  long hours = shop_.beyond_table();
  for (const auto& [order, room] : rooms_) hours += room.beyond_table();
  return hours;
}

std::vector<SideCoat> WoodCalculator::coats(std::size_t piece, const piece::Part& part) {
  const auto faces = board_faces(plan_, piece, part.id);
  return faces ? coats_of(plan_, *faces, films_) : std::vector<SideCoat>();
}

job::WoodReady WoodCalculator::ready(std::size_t p, const piece::Part& part) {
  job::WoodReady ready = readiness(part, piece(p).moisture_band, plan_.from, shop_);
  if (!piece(p).room) return ready;
  const auto [months, fresh] = months_.try_emplace(piece(p).order);
  if (fresh) months->second = months_of(room(p), moves_in(p), job_.shop.zone);
  const auto [driest, dampest] = std::minmax_element(months->second.begin(), months->second.end());
  ready.room_driest = *driest;
  ready.room_dampest = *dampest;
  return ready;
}

std::optional<job::WoodBoard> WoodCalculator::board(std::size_t p, const piece::Part& part, MoistureContent now) {
  const auto bare = board_of(part, now);
  if (!bare) return std::nullopt;
  job::WoodBoard board;
  board.thickness = bare->thickness;
  board.width = bare->width;
  board.coefficient = bare->coefficient;
  board.cut_said = part.solid.cut.has_value();
  board.cup_limit = part.solid.cup_limit;
  const auto in_shop = shop_.between(plan_.from, moves_in(p));
  const auto middle = wood::diffusion_across(wood::film_test_temperature).middle;
  const auto course = wood::warp_over(*bare, in_shop, films_after(coats(p, part), films_), middle);
  board.when_fixed = course.empty() ? now : course.back().mean;
  return board;
}

void WoodCalculator::move(std::size_t p, const piece::Part& part, job::WoodBoard& board) {
  if (!piece(p).room) return;
  const auto [months, fresh] = months_.try_emplace(piece(p).order);
  if (fresh) months->second = months_of(room(p), moves_in(p), job_.shop.zone);
  move_with(months->second, part.solid, board);
}

void WoodCalculator::cup(std::size_t p, const piece::Part& part, MoistureContent now, std::span<const FinishOption> options,
                         std::span<const job::WoodMark> marks, job::WoodBoard& board) {
  std::vector<Instant> at;
  for (const job::WoodMark& mark : marks) at.push_back(mark.at);
  const wood::Board bare = *board_of(part, now);
  const std::vector<wood::AirSpan>& hours = through(p);
  CupCourses planned;
  for (const FinishOption& option : options) {
    CupCourses courses = option.edges_bare ? with_bare_edges(planned, bare, hours) : cup_courses(bare, option.coats, hours, films_);
    if (planned[0].empty()) planned = courses;
    const auto summary = summarise(std::move(courses), option.name, at);
    if (!summary) {
      board.no_cup = "the wood stays drier than 6 % or damper than 14 %, and its coefficient of movement holds between them";
      continue;
    }
    if (summary->left_range) board.no_cup = "shown for the time in which it is between 6 and 14 % moist, where its coefficient holds";
    board.cups.push_back(summary->cupping);
  }
  if (board.cups.empty()) return;
  const Metres highest = board.cups.front().highest.cup;
  const wood::Curvature free(8 * highest.value() / (board.width.value() * board.width.value()));
  board.held = wood::held(free, board.width, board.thickness, across_the_grain);
}

}  // namespace coatday::planner
