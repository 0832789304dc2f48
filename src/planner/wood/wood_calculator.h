#pragma once
// What wood_findings() and wood_warnings() share: the airs, the films and what they make of one part.

#include <map>

#include "planner/wood/cupping.h"
#include "planner/wood/on_base.h"
#include "planner/wood/readiness.h"

namespace coatday::planner {

class WoodCalculator {
 public:
  WoodCalculator(const job::Job&, const job::Plan&);

  [[nodiscard]] const job::OrderPiece& piece(std::size_t p) const { return job_.order.pieces[p]; }
  [[nodiscard]] Films& films() { return films_; }
  /// When a piece leaves the shop's air.
  [[nodiscard]] Instant moves_in(std::size_t piece) const;

  [[nodiscard]] job::WoodReady ready(std::size_t piece, const piece::Part&);
  /// The board and its moisture when it is fixed. Nothing where the part is no board.
  [[nodiscard]] std::optional<job::WoodBoard> board(std::size_t piece, const piece::Part&, MoistureContent now);
  /// Its seasons and fixings, where there is a room.
  void move(std::size_t piece, const piece::Part&, job::WoodBoard&);
  /// Its cups in these options, up to a year in the room.
  void cup(std::size_t piece, const piece::Part&, MoistureContent now, std::span<const FinishOption>, std::span<const job::WoodMark>,
           job::WoodBoard&);
  /// Hours of shop and rooms so far that the table of equilibria does not reach.
  [[nodiscard]] long hours_beyond_table() const;
  [[nodiscard]] std::vector<SideCoat> coats(std::size_t piece, const piece::Part&);

 private:
  [[nodiscard]] AirHours& room(std::size_t piece);
  /// The shop's air until the piece leaves it, then the room's.
  [[nodiscard]] const std::vector<wood::AirSpan>& through(std::size_t piece);

  const job::Job& job_;
  const job::Plan& plan_;
  AirHours shop_;
  std::map<std::string, AirHours> rooms_;  // by order
  std::map<std::pair<std::string, Instant>, std::vector<wood::AirSpan>> through_;
  std::map<std::string, Months> months_;
  Films films_;
};

}  // namespace coatday::planner
