#include "piece/faces_flat.h"

#include <algorithm>
#include <cmath>

namespace coatday::piece {
namespace {

/// What is left of a size between two boards, never less than nothing.
Metres clear(Metres size, Metres taken) { return std::max(Metres(0), size - taken); }

Face seen(std::string name, SquareMetres area, FaceKind kind, std::optional<std::string> opposite = {}) {
  return {std::move(name), area, kind, false, Pass::second, true, std::move(opposite)};
}

Face hidden(std::string name, SquareMetres area, FaceKind kind, std::optional<std::string> opposite = {}) {
  return {std::move(name), area, kind, false, Pass::first, false, std::move(opposite)};
}

Face seen_end(std::string name, SquareMetres area) { return {std::move(name), area, FaceKind::end, true, Pass::second, true, {}}; }

/// Seen, but coated in the first pass.
Face early(Face face) {
  face.pass = Pass::first;
  return face;
}

}  // namespace

std::vector<Face> faces(const Board& b) {
  const SquareMetres broad = b.length * b.width, edge = b.length * b.thickness, end = b.width * b.thickness;
  return {seen("face", broad, FaceKind::broad, "underside"),
          hidden("underside", broad, FaceKind::broad, "face"),
          seen("front edge", edge, FaceKind::edge, "back edge"),
          seen("back edge", edge, FaceKind::edge, "front edge"),
          seen_end("left end", end),
          seen_end("right end", end)};
}

std::vector<Face> faces(const TaperedLeg& leg) {
  const double slant = std::hypot(leg.length.value(), (leg.top - leg.foot).value() / 2);
  const SquareMetres side = (leg.top + leg.foot) / 2 * Metres(slant);  // a trapezoid
  Face top_end = seen_end("top end", leg.top * leg.top);
  top_end.show = false;
  return {seen("front", side, FaceKind::broad, "back"),
          early(seen("back", side, FaceKind::broad, "front")),
          early(seen("left", side, FaceKind::broad, "right")),
          seen("right", side, FaceKind::broad, "left"),
          early(top_end),
          seen_end("foot end", leg.foot * leg.foot)};
}

std::vector<Face> faces(const RectTube& tube) {
  std::vector<Face> all{seen("outside", (tube.width + tube.height) * 2 * tube.length, FaceKind::round)};
  if (!tube.closed_ends) return all;
  for (const char* name : {"left end", "right end"}) all.push_back(seen_end(name, tube.width * tube.height));
  return all;
}

std::vector<Face> faces(const Case& c) {
  const Metres width = clear(c.width, c.thickness * 2), height = clear(c.height, c.thickness * 2), depth = clear(c.depth, c.thickness);
  const SquareMetres opening = width * height;
  const auto inside = [](const std::string& board, SquareMetres area) {
    return early(seen("inside " + board, area, FaceKind::broad, "outside " + board));
  };
  const auto outside = [](const std::string& board, SquareMetres area) {
    return seen("outside " + board, area, FaceKind::broad, "inside " + board);
  };
  return {inside("left side", height * depth),
          inside("right side", height * depth),
          inside("top", width * depth),
          inside("bottom", width * depth),
          inside("back", opening),
          outside("left side", c.height * c.depth),
          outside("right side", c.height * c.depth),
          outside("top", c.width * c.depth),
          hidden("outside bottom", c.width * c.depth, FaceKind::broad, "inside bottom"),
          hidden("outside back", c.width * c.height, FaceKind::broad, "inside back"),
          seen("front edges", c.width * c.height - opening, FaceKind::edge)};
}

std::vector<Face> faces(const Door& d) {
  const Metres opening_round = (clear(d.width, d.frame * 2) + clear(d.height, d.frame * 2)) * 2;
  const SquareMetres broad = d.width * d.height + opening_round * d.recess;
  const SquareMetres across = d.width * d.thickness, upright = d.height * d.thickness;
  return {seen("front", broad, FaceKind::broad, "back"),
          hidden("back", broad, FaceKind::broad, "front"),
          seen("top edge", across, FaceKind::edge, "bottom edge"),
          seen("bottom edge", across, FaceKind::edge, "top edge"),
          seen("left edge", upright, FaceKind::edge, "right edge"),
          seen("right edge", upright, FaceKind::edge, "left edge")};
}

std::vector<Face> faces(const FreeArea& given) {
  std::vector<Face> all;
  for (const FreeFace& f : given.faces) {
    const FaceKind kind = f.end_grain ? FaceKind::end : FaceKind::broad;
    all.push_back({f.name, f.area, kind, f.end_grain, f.show ? Pass::second : Pass::first, f.show, f.opposite});
  }
  return all;
}

}  // namespace coatday::piece
