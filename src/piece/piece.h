#pragma once
// A piece of furniture and its parts.

#include <optional>
#include <string>
#include <vector>

#include "piece/shape.h"
#include "piece/solid.h"
#include "quantity/location.h"

namespace coatday::piece {

enum class Support { points, hooks, laid };  ///< what a part rests on while a face dries
[[nodiscard]] std::string_view word(Support);

/// An area that gets no finish: glue faces, hidden contact.
struct Mask {
  std::string face;
  SquareMetres area;  ///< of one item
  std::string reason;
  Location where;
};

/// A face that deviates from the schedule. It needs a reason.
struct Exception {
  std::string face;
  int coats = 0;  ///< at most so many film coats instead of all; 0: none at all
  std::string reason;
  Location where;
};

struct Part {
  std::string id;  ///< unique in its piece
  std::string name;
  Shape shape;
  int count = 1;
  std::optional<std::string> species;  ///< id; none: steel
  std::string schedule;                ///< id
  Support support = Support::points;
  std::vector<Mask> masks;
  std::vector<Exception> exceptions;
  std::optional<int> turning_people;  ///< who it takes to turn one over; none: by its mass
  std::optional<Celsius> kept_at;     ///< where it is kept until it is carried in; none: in the shop
  Solid solid;                        ///< of a wooden part
  Location where;

  [[nodiscard]] bool wood() const { return species.has_value(); }
};

struct Piece {
  std::string id;
  std::string name;
  std::vector<Part> parts;
  bool food_contact = false;
  Location where;
};

/// A face of a part after masking, with what becomes of it.
struct PartFace {
  Face face;
  SquareMetres coated;  ///< of one item, masks taken off
  std::optional<Exception> exception;
};
[[nodiscard]] std::vector<PartFace> faces_of(const Part&);

}  // namespace coatday::piece
