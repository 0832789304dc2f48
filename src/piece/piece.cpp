#include "piece/piece.h"

#include <algorithm>
#include <array>

namespace coatday::piece {
namespace {

SquareMetres masked(const Part& part, const std::string& face) {
  SquareMetres sum;
  for (const Mask& mask : part.masks)
    if (mask.face == face) sum += mask.area;
  return sum;
}

std::optional<Exception> exception_for(const Part& part, const std::string& face) {
  const auto found = std::find_if(part.exceptions.begin(), part.exceptions.end(), [&](const Exception& e) { return e.face == face; });
  if (found == part.exceptions.end()) return std::nullopt;
  return *found;
}

}  // namespace

std::string_view word(Support support) {
  static constexpr std::array<std::string_view, 3> words{"points", "hooks", "laid"};
  return words[static_cast<std::size_t>(support)];
}

std::string_view word(Core core) {
  static constexpr std::array<std::string_view, 4> words{"solid wood", "plywood", "MDF", "particleboard"};
  return words[static_cast<std::size_t>(core)];
}

std::string_view word(FixingKind kind) {
  static constexpr std::array<std::string_view, 4> words{"hole", "slot", "button", "fixed"};
  return words[static_cast<std::size_t>(kind)];
}

std::vector<PartFace> faces_of(const Part& part) {
  std::vector<PartFace> all;
  for (Face& face : faces_of(part.shape)) {
    face.end_grain = face.end_grain && part.wood();
    const SquareMetres coated = std::max(SquareMetres(0), face.area - masked(part, face.name));
    auto exception = exception_for(part, face.name);
    all.push_back({std::move(face), coated, std::move(exception)});
  }
  return all;
}

}  // namespace coatday::piece
