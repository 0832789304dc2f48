#pragma once
// Shapes that furniture is made of, and their faces.

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "quantity/quantity.h"

namespace coatday::piece {

struct Board {
  Metres length, width, thickness;
};  ///< top, shelf, rail, drawer front
struct RoundTop {
  Metres diameter, thickness;
};
struct TaperedLeg {
  Metres length, top, foot;
};  ///< square section, `top` wide above and `foot` wide below
struct ProfilePoint {
  Metres at, diameter;
};  ///< distance from the top end
struct TurnedLeg {
  std::vector<ProfilePoint> profile;
};  ///< revolved about its length; at least two points, `at` increasing
struct RoundTube {
  Metres length, diameter;
  bool closed_ends = false;
  std::optional<Metres> wall{};
};  ///< no wall: not known
struct RectTube {
  Metres length, width, height;
  bool closed_ends = false;
  std::optional<Metres> wall{};
};
/// A carcase of boards, open in front: two sides, top, bottom and back, each with an inside and an outside.
struct Case {
  Metres width, height, depth, thickness;
};
/// A frame of `frame` wide members around a panel that lies `recess` deep on both sides.
struct Door {
  Metres width, height, thickness, frame, recess;
};
/// A bowl: revolved wall, open above; the profile runs from the centre of the foot to the rim. At most half as high as wide.
struct Bowl {
  Metres diameter, height, wall;
};
/// A cup, a vase, a deep bowl: a revolved wall, open above. The profile is its outside, from the rim down to the foot.
struct Vessel {
  std::vector<ProfilePoint> profile;  ///< `at` from the rim; at least two points, `at` increasing
  Metres wall;                        ///< measured level, the same at each height
  Metres depth;                       ///< of the inside; below it the vessel is solid
};
struct FreeFace {
  std::string name;
  SquareMetres area;
  std::optional<std::string> opposite;
  bool end_grain = false;
  bool show = true;
};
/// Areas as given; sizes for the drying place. The wall of what is hollow: a welded frame of tubes.
struct FreeArea {
  std::vector<FreeFace> faces;
  Metres length, width, height;
  std::optional<Metres> wall{};
};

using Shape = std::variant<Board, RoundTop, TaperedLeg, TurnedLeg, RoundTube, RectTube, Case, Door, Bowl, Vessel, FreeArea>;

enum class FaceKind { broad, edge, end, round };

/// In which pass a face is coated when the piece lies on something: the less visible first, edges with one of the faces.
enum class Pass { first, second };

struct Face {
  std::string name;   ///< "face", "underside", "left end", "inside back", "all round"
  SquareMetres area;  ///< of one item, nothing masked
  FaceKind kind = FaceKind::broad;
  bool end_grain = false;  ///< only of wood
  Pass pass = Pass::first;
  bool show = false;                    ///< seen in use
  std::optional<std::string> opposite;  ///< the name of the face across the wood
};

/// Every face of the shape, ends and edges apart.
[[nodiscard]] std::vector<Face> faces_of(const Shape&);
[[nodiscard]] SquareMetres total_area(const std::vector<Face>&);

[[nodiscard]] Metres widest(const std::vector<ProfilePoint>&);

/// What it needs to lie on, longest side first.
struct Footprint {
  Metres length, width, height;
};
[[nodiscard]] Footprint footprint(const Shape&);

[[nodiscard]] std::string_view shape_word(const Shape&);  ///< "board", "round top", ...

}  // namespace coatday::piece
