#include "planner/wood/coating.h"

#include <algorithm>
#include <array>

#include <fmt/core.h>

namespace coatday::planner {

std::string Films::finish_of(const finish::Product& product) {
  const auto known = wood::film_class(product.family);
  if (!known) {
    notes_.insert(fmt::format("{}: nothing is known of its film; taken as none", product.name));
    return "";
  }
  if (known->nearest && !known->finish.empty())
    notes_.insert(fmt::format("{}: no data; taken as {}, the nearest class (judgement)", product.name, known->finish));
  if (!known->nearest && !known->finish.empty()) notes_.insert(fmt::format("{}: {}", product.name, known->finish));
  return std::string(known->finish);
}

wood::FilmResistance Films::of(const std::string& finish, int coats) {
  const auto [at, fresh] = known_.try_emplace({finish, coats}, wood::no_film);
  if (!fresh) return at->second;
  const auto film = wood::film_of(finish, coats, wood::diffusion_across(wood::film_test_temperature).middle);
  if (film) at->second = film->resistance;
  if (film && film->beyond) {
    notes_.insert(
        fmt::format("{}: {} {} more than were measured; the most that were count", finish, coats, coats == 1 ? "coat is" : "coats are"));
  }
  if (film && film->verification != wood::Verification::compared)
    notes_.insert(fmt::format("{}, {} {}: a value from memory", finish, coats, coats == 1 ? "coat" : "coats"));
  return at->second;
}

std::vector<wood::FilmChange> films_after(const std::vector<SideCoat>& coats, Films& films) {
  std::array<std::map<std::string, int>, 2> counts;
  std::vector<wood::FilmChange> changes;
  for (const SideCoat& coat : coats) {
    if (coat.finish.empty()) continue;
    auto& side = counts[static_cast<std::size_t>(coat.side)];
    ++side[coat.finish];
    wood::FilmResistance all = wood::no_film;
    for (const auto& [finish, count] : side) all += films.of(finish, count);
    changes.push_back({coat.at, coat.side, all});
  }
  return changes;
}

std::optional<BoardFaces> board_faces(const job::Plan& plan, std::size_t piece, const std::string& part) {
  std::optional<std::size_t> face, back;
  for (std::size_t f = 0; f < plan.faces.size(); ++f) {
    const job::FaceEntry& entry = plan.faces[f];
    if (entry.piece != piece || entry.part_id != part) continue;
    if (entry.face == "face" && !face) face = f;
    if (entry.face == "underside" && !back) back = f;
  }
  if (!face || !back) return std::nullopt;
  return BoardFaces{*back, *face};
}

std::vector<SideCoat> coats_of(const job::Plan& plan, const BoardFaces& faces, Films& films) {
  std::vector<SideCoat> coats;
  for (const job::Event& event : plan.events) {
    if (event.product.empty()) continue;
    const finish::Product& product = plan.products.at(event.product);
    for (const auto& [face, side] : {std::pair(faces.back, wood::Side::back), std::pair(faces.face, wood::Side::face)}) {
      if (std::find(event.faces.begin(), event.faces.end(), face) == event.faces.end()) continue;
      coats.push_back({event.end, side, films.finish_of(product), product.film});
    }
  }
  std::stable_sort(coats.begin(), coats.end(), [](const SideCoat& a, const SideCoat& b) { return a.at < b.at; });
  return coats;
}

}  // namespace coatday::planner
