#include "piece/shape.h"

#include <array>

#include "piece/faces.h"

namespace coatday::piece {

std::vector<Face> faces_of(const Shape& shape) {
  return std::visit([](const auto& kind) { return faces(kind); }, shape);
}

SquareMetres total_area(const std::vector<Face>& all) {
  SquareMetres sum;
  for (const Face& face : all) sum += face.area;
  return sum;
}

std::string_view shape_word(const Shape& shape) {
  static constexpr std::array<std::string_view, std::variant_size_v<Shape>> words{
      "board", "round top", "tapered leg", "turned leg", "round tube", "rect tube", "case", "door", "bowl", "free"};
  return words[shape.index()];
}

}  // namespace coatday::piece
