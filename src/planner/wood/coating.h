#pragma once
// The films that a plan's coats lay on the two sides of a board.

#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "job/plan.h"
#include "wood/film.h"
#include "wood/warp.h"

namespace coatday::planner {

/// A coat on one side of a board.
struct SideCoat {
  Instant at;
  wood::Side side;
  std::string finish;  ///< of the table of moisture exclusion; empty: leaves no film that counts
  bool film = false;   ///< adds to the film that both faces need alike
};

/// Resistances of films, each found once: some milliseconds apiece.
class Films {
 public:
  /// What a product's family is taken as, noting where that is a guess.
  [[nodiscard]] std::string finish_of(const finish::Product&);
  /// What so many coats of one finish add to still air.
  [[nodiscard]] wood::FilmResistance of(const std::string& finish, int coats);
  /// "water clear: no data; taken as Acrylic latex house primer paint, the nearest class".
  [[nodiscard]] const std::set<std::string>& notes() const { return notes_; }

 private:
  std::map<std::pair<std::string, int>, wood::FilmResistance> known_;
  std::set<std::string> notes_;
};

/// The film after each coat, finishes one over another adding up.
[[nodiscard]] std::vector<wood::FilmChange> films_after(const std::vector<SideCoat>&, Films&);

/// The entries of a part's face and underside, those of its first items: nothing for a shape without them.
struct BoardFaces {
  std::size_t back, face;
};
[[nodiscard]] std::optional<BoardFaces> board_faces(const job::Plan&, std::size_t piece, const std::string& part);

/// The plan's coats on them, by the end of each.
[[nodiscard]] std::vector<SideCoat> coats_of(const job::Plan&, const BoardFaces&, Films&);

}  // namespace coatday::planner
