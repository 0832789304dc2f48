#include "report/figures/views.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace coatday::report::page {
namespace {

constexpr double margin = 1;  // for the outline
constexpr double apart = 4;   // between sides that do not meet

Patch box(std::string face, double x, double y, double width, double height) {
  return {std::move(face),
          {{{{x, y}, {x + width, y}, {x + width, y + height}, {x, y + height}}}},
          {x + width / 2, y + height / 2},
          width,
          height};
}
Patch polygon(std::string face, std::vector<Point> corners, Point middle, double room, double tall) {
  return {std::move(face), {{std::move(corners)}}, middle, room, tall};
}
Patch disc(std::string face, Point centre, double radius) {
  return {std::move(face), {{{centre}, radius}}, centre, radius * 1.4, radius * 1.4};
}
/// Between two circles; too narrow for a figure.
Patch ring(std::string face, Point centre, double outer, double inner) {
  return {std::move(face), {{{centre}, outer}, {{centre}, inner}}, {}};
}

/// A broad face with what is folded out around it.
struct Folded {
  std::string face, up, down, left, right;
};

View fold(std::string title, const Folded& names, double width, double height, double thick) {
  const double x = margin + thick, y = margin + thick;
  View view{std::move(title), {}, width + 2 * (thick + margin), height + 2 * (thick + margin)};
  view.patches.push_back(box(names.face, x, y, width, height));
  view.patches.push_back(box(names.up, x, margin, width, thick));
  view.patches.push_back(box(names.down, x, y + height, width, thick));
  view.patches.push_back(box(names.left, margin, y, thick, height));
  view.patches.push_back(box(names.right, x + width, y, thick, height));
  return view;
}

std::vector<View> views(const piece::Board& b, DrawingScale s) {
  const double length = s(b.length, 12), width = s(b.width, 12), thick = s(b.thickness);
  return {fold("from above", {"face", "back edge", "front edge", "left end", "right end"}, length, width, thick),
          fold("from below", {"underside", "front edge", "back edge", "left end", "right end"}, length, width, thick)};
}

std::vector<View> views(const piece::Door& d, DrawingScale s) {
  const double width = s(d.width, 12), height = s(d.height, 12), thick = s(d.thickness), frame = s(d.frame, 3);
  std::vector<View> both{fold("front", {"front", "top edge", "bottom edge", "left edge", "right edge"}, width, height, thick),
                         fold("back", {"back", "top edge", "bottom edge", "right edge", "left edge"}, width, height, thick)};
  for (View& view : both) {
    const double x = margin + thick + frame, y = margin + thick + frame;
    const double w = std::max(0.0, width - 2 * frame), h = std::max(0.0, height - 2 * frame);
    view.patches.front().lines = box("", x, y, w, h).loops;
  }
  return both;
}

std::vector<View> views(const piece::RoundTop& top, DrawingScale s) {
  const double radius = s(top.diameter, 24) / 2, thick = s(top.thickness), side = 2 * (radius + thick + margin);
  const Point centre{side / 2, side / 2};
  std::vector<View> both;
  for (const auto& [title, face] : {std::pair{"from above", "face"}, {"from below", "underside"}}) {
    both.push_back({title, {disc(face, centre, radius), ring("edge", centre, radius + thick, radius)}, side, side});
  }
  return both;
}

// Lying, its top end to the left; two sides that meet, one below the other, and the end that goes with them.
View leg_view(std::string title, const std::array<std::string, 2>& sides, const std::string& end, bool foot, const piece::TaperedLeg& leg,
              DrawingScale s) {
  const double length = s(leg.length, 20), top = s(leg.top, 10), low = s(leg.foot, 7);
  const double tall = std::max(top, low), square = foot ? low : top, x = margin + (foot ? 0 : square + apart);
  View view{std::move(title), {}, length + square + apart + 2 * margin, 2 * tall + apart + 2 * margin};
  double y = margin;
  for (const std::string& side : sides) {
    const double axis = y + tall / 2;
    view.patches.push_back(polygon(side,
                                   {{x, axis - top / 2}, {x + length, axis - low / 2}, {x + length, axis + low / 2}, {x, axis + top / 2}},
                                   {x + length / 2, axis}, length, std::min(top, low)));
    y += tall + apart;
  }
  view.patches.push_back(box(end, foot ? x + length + apart : margin, margin + (tall - square) / 2, square, square));
  return view;
}

std::vector<View> views(const piece::TaperedLeg& leg, DrawingScale s) {
  return {leg_view("front, right, foot", {"front", "right"}, "foot end", true, leg, s),
          leg_view("back, left, top", {"back", "left"}, "top end", false, leg, s)};
}

/// The outline of what is turned, lying, from `x` along its axis.
std::vector<Point> turned_outline(const std::vector<piece::ProfilePoint>& profile, double x, double axis, DrawingScale s) {
  std::vector<Point> outline;
  for (const piece::ProfilePoint& p : profile) outline.push_back({x + s(p.at, 0), axis - s(p.diameter, 6) / 2});
  for (auto p = profile.rbegin(); p != profile.rend(); ++p) outline.push_back({x + s(p->at, 0), axis + s(p->diameter, 6) / 2});
  return outline;
}

std::vector<View> views(const piece::TurnedLeg& leg, DrawingScale s) {
  if (leg.profile.empty()) return {};
  const double tall = s(piece::widest(leg.profile), 10), first = s(leg.profile.front().diameter, 6) / 2,
               last = s(leg.profile.back().diameter, 6) / 2;
  const double x = margin + 2 * first + apart, axis = margin + tall / 2;
  const double length = s(leg.profile.back().at, 20), end = x + length;
  return {{"from the side, with its ends",
           {polygon("all round", turned_outline(leg.profile, x, axis, s), {x + length / 2, axis}, length, tall / 2),
            disc("top end", {margin + first, axis}, first), disc("foot end", {end + apart + last, axis}, last)},
           end + apart + 2 * last + margin,
           tall + 2 * margin}};
}

View tube_view(double length, double tall, bool closed, bool round) {
  const double x = margin + (closed ? tall + apart : 0), y = margin, end = x + length;
  View view{
      closed ? "from the side, with its ends" : "from the side", {box("outside", x, y, length, tall)}, end + margin, tall + 2 * margin};
  if (!closed) return view;
  const auto cap = [&](const char* name, double at) {
    return round ? disc(name, {at + tall / 2, y + tall / 2}, tall / 2) : box(name, at, y, tall, tall);
  };
  view.patches.push_back(cap("left end", margin));
  view.patches.push_back(cap("right end", end + apart));
  view.width += apart + tall;
  return view;
}

std::vector<View> views(const piece::RoundTube& t, DrawingScale s) {
  return {tube_view(s(t.length, 20), s(t.diameter, 7), t.closed_ends, true)};
}
std::vector<View> views(const piece::RectTube& t, DrawingScale s) {
  return {tube_view(s(t.length, 20), s(std::max(t.width, t.height), 7), t.closed_ends, false)};
}

// Into it from the front: the back lies deep, the other boards run towards it.
View case_inside(const piece::Case& c, DrawingScale s) {
  const double width = s(c.width, 40), height = s(c.height, 40), rim = s(c.thickness, 4);
  const double deep = std::min({s(c.depth, 10) / 2, width / 3, height / 3});
  const double l = margin + rim, t = margin + rim, r = margin + width - rim, b = margin + height - rim;
  const double L = l + deep, T = t + deep, R = r - deep, B = b - deep;
  View view{"inside, from the front", {}, width + 2 * margin, height + 2 * margin};
  Patch edges = box("front edges", margin, margin, width, height);
  edges.loops.push_back(box("", l, t, r - l, b - t).loops.front());
  edges.room = edges.tall = 0;
  view.patches = {box("inside back", L, T, R - L, B - T),
                  polygon("inside top", {{l, t}, {r, t}, {R, T}, {L, T}}, {(l + r) / 2, (t + T) / 2}, R - L, deep),
                  polygon("inside bottom", {{l, b}, {r, b}, {R, B}, {L, B}}, {(l + r) / 2, (b + B) / 2}, R - L, deep),
                  polygon("inside left side", {{l, t}, {L, T}, {L, B}, {l, b}}, {(l + L) / 2, (t + b) / 2}, deep, B - T),
                  polygon("inside right side", {{r, t}, {R, T}, {R, B}, {r, b}}, {(r + R) / 2, (t + b) / 2}, deep, B - T),
                  std::move(edges)};
  return view;
}

View case_outside(const piece::Case& c, DrawingScale s) {
  const double width = s(c.width, 40), height = s(c.height, 40), deep = s(c.depth, 10);
  const double x = margin + deep, y = margin + deep;
  return {"outside, from behind, unfolded",
          {box("outside back", x, y, width, height), box("outside top", x, margin, width, deep),
           box("outside bottom", x, y + height, width, deep), box("outside right side", margin, y, deep, height),
           box("outside left side", x + width, y, deep, height)},
          width + 2 * (deep + margin),
          height + 2 * (deep + margin)};
}

std::vector<View> views(const piece::Case& c, DrawingScale s) { return {case_inside(c, s), case_outside(c, s)}; }

std::vector<View> views(const piece::Bowl& b, DrawingScale s) {
  const double radius = s(b.diameter, 24) / 2, wall = s(b.wall, 3), side = 2 * (radius + margin);
  const Point centre{side / 2, side / 2};
  const double inner = std::max(radius - wall, radius / 2);
  Patch outside = disc("outside", centre, radius);
  outside.lines = {{{centre}, radius * 0.4}};
  return {{"from above", {disc("inside", centre, inner), ring("rim", centre, radius, inner)}, side, side},
          {"from below", {std::move(outside)}, side, side}};
}

std::vector<View> views(const piece::Vessel& v, DrawingScale s) {
  if (v.profile.empty()) return {};
  const double tall = s(piece::widest(v.profile), 10), axis = margin + tall / 2;
  const double radius = s(v.profile.front().diameter, 24) / 2, side = 2 * (radius + margin), length = s(v.profile.back().at, 20);
  const Point centre{side / 2, side / 2};
  const double inner = std::max(radius - s(v.wall, 3), radius / 2);
  return {{"from above", {disc("inside", centre, inner), ring("rim", centre, radius, inner)}, side, side},
          {"from the side, lying",
           {polygon("outside", turned_outline(v.profile, margin, axis, s), {margin + length / 2, axis}, length, tall / 2)},
           length + 2 * margin,
           tall + 2 * margin}};
}

// Nobody has said how it looks: a field for each face, as large as its area beside the others.
View fields(std::string title, const std::vector<const piece::FreeFace*>& faces, double length, double width) {
  double sum = 0, x = margin;
  for (const piece::FreeFace* face : faces) sum += face->area.value();
  View view{std::move(title), {}, length + 2 * margin, width + 2 * margin};
  for (const piece::FreeFace* face : faces) {
    const double share = face->area.value() / sum * length;
    view.patches.push_back(box(face->name, x, margin, share, width));
    x += share;
  }
  return view;
}

std::vector<View> views(const piece::FreeArea& f, DrawingScale s) {
  std::array<double, 3> sizes{s(f.length, 30), s(f.width, 12), s(f.height, 12)};
  std::sort(sizes.begin(), sizes.end(), std::greater<>());
  std::vector<const piece::FreeFace*> seen, hidden;
  for (const piece::FreeFace& face : f.faces) (face.show ? seen : hidden).push_back(&face);
  std::vector<View> both;
  if (!seen.empty()) both.push_back(fields("what is seen, by area", seen, sizes[0], sizes[1]));
  if (!hidden.empty()) both.push_back(fields("what is not seen, by area", hidden, sizes[0], sizes[1]));
  return both;
}

}  // namespace

double DrawingScale::operator()(Metres m, double least) const { return std::max(least, m.value() * pixels); }

std::vector<View> views_of(const piece::Shape& shape, DrawingScale scale) {
  return std::visit([scale](const auto& s) { return views(s, scale); }, shape);
}

Metres longest_of(const piece::Shape& shape) {
  double longest = 0;
  for (const View& view : views_of(shape, DrawingScale{1000})) longest = std::max({longest, view.width, view.height});
  return Metres(longest / 1000);
}

}  // namespace coatday::report::page
