#include "input/shapes.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <set>

#include "input/amounts.h"
#include "input/choices.h"

namespace coatday::input {
namespace {

using piece::Shape;

Metres size(const Fields& fields, std::string_view key) {
  Metres length;
  fields.must(key, length, parse_length);
  return length;
}

// Told at the first size; sizes that were not read are 0 and judge nothing.
void must_be_less(const Fields& fields, std::string_view key, Metres is, Metres limit, std::string_view why) {
  if (is > Metres(0) && limit > Metres(0) && is >= limit) fields.mistake(key, fmt::format("'{}' is too large: {}", key, why));
}

std::optional<Metres> wall(const Fields& f, Metres across) {
  std::optional<Metres> wall;
  if (f.take("wall", wall, parse_length)) must_be_less(f, "wall", *wall * 2, across, "two walls must leave a hollow");
  return wall;
}

Shape board(const Fields& f, Mistakes&) { return piece::Board{size(f, "length"), size(f, "width"), size(f, "thickness")}; }
Shape round_top(const Fields& f, Mistakes&) { return piece::RoundTop{size(f, "diameter"), size(f, "thickness")}; }
Shape tapered_leg(const Fields& f, Mistakes&) { return piece::TaperedLeg{size(f, "length"), size(f, "top"), size(f, "foot")}; }

// `from` is the end from which distances are measured.
std::vector<piece::ProfilePoint> read_profile(const Fields& f, std::string_view from, Mistakes& mistakes) {
  std::vector<piece::ProfilePoint> profile;
  f.need("profile");
  for (const Value& item : f.list("profile")) {
    const Fields fields(item, "a point of the profile", {"at", "diameter"}, mistakes);
    piece::ProfilePoint point;
    const bool has_place = fields.must("at", point.at, parse_distance);
    fields.must("diameter", point.diameter, parse_length);
    if (has_place && !profile.empty() && point.at <= profile.back().at) {
      fields.mistake("at", fmt::format("the distances from the {} must increase", from));
    }
    profile.push_back(point);
  }
  if (f.has("profile") && profile.size() < 2) f.mistake("profile", "a profile needs two points at least");
  return profile;
}

Shape turned_leg(const Fields& f, Mistakes& mistakes) { return piece::TurnedLeg{read_profile(f, "top end", mistakes)}; }

// The narrowest diameter as deep as the vessel is hollow; nothing where no size is known.
Metres narrowest(const piece::Vessel& vessel) {
  std::optional<Metres> least;
  for (const piece::ProfilePoint& point : vessel.profile) {
    const bool hollow = point.at - vessel.profile.front().at <= vessel.depth;
    if (hollow && point.diameter > Metres(0)) least = std::min(least.value_or(point.diameter), point.diameter);
  }
  return least.value_or(Metres(0));
}

Shape vessel(const Fields& f, Mistakes& mistakes) {
  piece::Vessel v{read_profile(f, "rim", mistakes), size(f, "wall"), {}};
  const Metres height = v.profile.empty() ? Metres(0) : v.profile.back().at - v.profile.front().at;
  if (f.take("depth", v.depth, parse_length)) {
    must_be_less(f, "depth", v.depth, height, "below the inside there must be a foot");
  } else {
    must_be_less(f, "wall", v.wall, height, "the foot must leave room within the vessel");
    v.depth = std::max(Metres(0), height - v.wall);
  }
  must_be_less(f, "wall", v.wall * 2, narrowest(v), "two walls must leave room within the vessel, as deep as it is hollow");
  return v;
}

Shape round_tube(const Fields& f, Mistakes&) {
  piece::RoundTube tube{size(f, "length"), size(f, "diameter")};
  f.take("closed ends", tube.closed_ends, parse_yes_no);
  tube.wall = wall(f, tube.diameter);
  return tube;
}

Shape rect_tube(const Fields& f, Mistakes&) {
  piece::RectTube tube{size(f, "length"), size(f, "width"), size(f, "height")};
  f.take("closed ends", tube.closed_ends, parse_yes_no);
  tube.wall = wall(f, std::min(tube.width, tube.height));
  return tube;
}

Shape box(const Fields& f, Mistakes&) {
  const piece::Case c{size(f, "width"), size(f, "height"), size(f, "depth"), size(f, "thickness")};
  must_be_less(f, "thickness", c.thickness * 2, std::min(c.width, c.height), "two boards must leave room within the case");
  must_be_less(f, "thickness", c.thickness, c.depth, "the back must leave room within the case");
  return c;
}

Shape door(const Fields& f, Mistakes&) {
  const piece::Door d{size(f, "width"), size(f, "height"), size(f, "thickness"), size(f, "frame"), size(f, "recess")};
  must_be_less(f, "frame", d.frame * 2, std::min(d.width, d.height), "two members must leave room for the panel");
  must_be_less(f, "recess", d.recess * 2, d.thickness, "the recesses of both sides must leave a panel");
  return d;
}

Shape bowl(const Fields& f, Mistakes&) {
  const piece::Bowl b{size(f, "diameter"), size(f, "height"), size(f, "wall")};
  must_be_less(f, "wall", b.wall * 2, b.diameter, "two walls must leave room within the bowl");
  must_be_less(f, "wall", b.wall, b.height, "the foot must leave room within the bowl");
  if (b.diameter > Metres(0) && b.height > b.diameter / 2) {
    f.mistake("height",
              "a bowl is at most half as high as it is wide; for a cup, a vase or a deep bowl write 'shape: vessel' and its profile");
  }
  return b;
}

void check_opposites(std::span<const Value> items, const std::vector<piece::FreeFace>& faces, Mistakes& mistakes) {
  std::set<std::string> names;
  for (const piece::FreeFace& face : faces) names.insert(face.name);
  for (std::size_t i = 0; i < faces.size(); ++i) {
    const Location where = items[i].where();
    const auto& opposite = faces[i].opposite;
    if (!faces[i].name.empty() && std::ranges::count(faces, faces[i].name, &piece::FreeFace::name) > 1) {
      mistakes.add(where, fmt::format("two faces have the name {}", in_quotes(faces[i].name)));
    }
    if (!opposite) continue;
    if (!names.contains(*opposite)) mistakes.add(where, unknown("face", *opposite, {names.begin(), names.end()}));
    if (*opposite == faces[i].name) mistakes.add(where, "a face is not opposite itself");
  }
}

Shape free_area(const Fields& f, Mistakes& mistakes) {
  piece::FreeArea area{{}, size(f, "length"), size(f, "width"), size(f, "height"), {}};
  area.wall = wall(f, std::min({area.length, area.width, area.height}));
  f.need("faces");
  const auto items = f.list("faces");
  constexpr std::size_t most_faces = 100;
  if (items.size() > most_faces) f.mistake("faces", fmt::format("more than {} faces", most_faces));
  for (const Value& item : items.first(std::min(items.size(), most_faces))) {
    const Fields fields(item, "a face", {"name", "area", "opposite", "end grain", "show"}, mistakes);
    piece::FreeFace face;
    fields.must("name", face.name, parse_name);
    fields.must("area", face.area, parse_area);
    fields.take("opposite", face.opposite, parse_name);
    fields.take("end grain", face.end_grain, parse_yes_no);
    fields.take("show", face.show, parse_yes_no);
    area.faces.push_back(std::move(face));
  }
  if (f.has_empty_list("faces")) f.mistake("faces", "a free shape needs a face");
  check_opposites(items, area.faces, mistakes);
  return area;
}

struct Form {
  std::string_view word;
  Keys keys;
  Shape (*read)(const Fields&, Mistakes&);
};

const std::array<Form, 11>& forms() {
  static const std::array<Form, 11> all{{
      {"board", {"length", "width", "thickness"}, board},
      {"round top", {"diameter", "thickness"}, round_top},
      {"tapered leg", {"length", "top", "foot"}, tapered_leg},
      {"turned leg", {"profile"}, turned_leg},
      {"round tube", {"length", "diameter", "wall", "closed ends"}, round_tube},
      {"rect tube", {"length", "width", "height", "wall", "closed ends"}, rect_tube},
      {"case", {"width", "height", "depth", "thickness"}, box},
      {"door", {"width", "height", "thickness", "frame", "recess"}, door},
      {"bowl", {"diameter", "height", "wall"}, bowl},
      {"vessel", {"profile", "wall", "depth"}, vessel},
      {"free", {"length", "width", "height", "wall", "faces"}, free_area},
  }};
  return all;
}

}  // namespace

const Keys& shape_words() {
  static const Keys words = [] {
    Keys all;
    for (const Form& form : forms()) all.push_back(form.word);
    return all;
  }();
  return words;
}

Keys shape_keys(std::string_view shape_word) {
  const auto form = std::ranges::find(forms(), shape_word, &Form::word);
  return form == forms().end() ? Keys{} : form->keys;
}

Shape read_shape(std::string_view shape_word, const Fields& fields, Mistakes& mistakes) {
  return std::ranges::find(forms(), shape_word, &Form::word)->read(fields, mistakes);
}

}  // namespace coatday::input
