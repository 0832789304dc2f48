#include "report/sections/both_faces.h"

#include <fmt/core.h>

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "report/sections/faces.h"
#include "report/words.h"

namespace coatday::report {
namespace {

using FilmCoats = std::map<std::string, int>;  // by product

std::vector<FilmCoats> film_coats(const job::Plan& plan) {
  std::vector<FilmCoats> by_face(plan.faces.size());
  for (const job::Event& event : plan.events) {
    if (!event.film) continue;
    for (const std::size_t face : event.faces) ++by_face.at(face)[event.product];
  }
  return by_face;
}

int total(const FilmCoats& coats) {
  int sum = 0;
  for (const auto& [product, count] : coats) sum += count;
  return sum;
}

bool excused(const job::Plan& plan, std::size_t face) {
  const job::FaceEntry& entry = plan.faces[face];
  return entry.exception || (entry.opposite && plan.faces[*entry.opposite].exception);
}

std::string shortfall(const job::Plan& plan, const std::vector<FilmCoats>& coats, std::size_t face) {
  const job::FaceEntry& entry = plan.faces[face];
  const job::FaceEntry& other = plan.faces[*entry.opposite];
  return fmt::format("{} ({} {}, {} {})", part_text(plan, entry), entry.face, total(coats[face]), other.face,
                     total(coats[*entry.opposite]));
}

}  // namespace

FaceVerdict both_faces(const job::Plan& plan) {
  const std::vector<FilmCoats> coats = film_coats(plan);
  std::vector<std::string> unequal;
  // Of the cut list: the items of one part may be coated in several batches.
  std::set<std::pair<std::size_t, std::string>> parts;
  std::set<std::tuple<std::size_t, std::string, std::string>> exceptions;
  for (const PartFaces& part : parts_of(plan.faces)) {
    if (!part.first->wood) continue;
    parts.emplace(part.first->piece, part.first->part_id);
    for (const std::size_t face : part.faces) {
      const job::FaceEntry& entry = plan.faces[face];
      if (entry.exception) exceptions.emplace(entry.piece, entry.part_id, entry.face);
      const auto opposite = plan.faces[face].opposite;
      if (!opposite || *opposite < face || excused(plan, face) || coats[face] == coats[*opposite]) continue;
      unequal.push_back(shortfall(plan, coats, face));
    }
  }
  if (!unequal.empty()) return {false, "NOT ALIKE: film coats of " + listed(unequal)};
  if (parts.empty()) return {true, "no wooden part"};
  std::string words = parts.size() == 1   ? "both sides alike on the one wooden part"
                      : parts.size() == 2 ? "both sides alike on both wooden parts"
                                          : fmt::format("both sides alike on all {} wooden parts", parts.size());
  if (!exceptions.empty())
    words += ", except for " + counted(exceptions.size(), "exception with its reason below", "exceptions with their reasons below");
  return {true, words};
}

}  // namespace coatday::report
